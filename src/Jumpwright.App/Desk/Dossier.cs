using System.Collections.Concurrent;
using System.Collections.Immutable;
using Jumpwright.App.Desk.Journals;
using Jumpwright.Athletes;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>
/// All that is known of one athlete. What the tables and the journal say is there at once; the trials are read when they are
/// first asked for.
/// </summary>
public sealed class Dossier
{
    private readonly Once<Measured> _measured;
    private readonly Once<Set> _set;
    private readonly Once<History> _history;
    private readonly ConcurrentDictionary<LocalDate, Once<Profile>> _profiles = new();

    private Dossier(History written, History bare, Once<Measured> measured, Once<Set> set)
    {
        Written = written;
        Bare = bare;
        _measured = measured;
        _set = set;
        _history = new Once<History>(() => bare with { Trials = set.Value.Trials });
    }

    public Athlete Athlete => Bare.Athlete;

    /// <summary>What is known but the trials.</summary>
    public History Bare { get; }

    /// <summary>Whether the trials were read, so that asking for the history costs nothing.</summary>
    public bool IsRead => _history.IsMade;

    /// <summary>Everything; reads the trials where they were not read yet.</summary>
    public History History => _history.Value;

    /// <summary>Trials some of whose events a person set.</summary>
    public ImmutableArray<CorrectedTrial> Corrected => _set.Value.Corrected;

    /// <summary>What the tables say, without the journal.</summary>
    internal History Written { get; }

    /// <summary>A dossier whose trials are still to be read.</summary>
    internal static Dossier Of(
        History written,
        JournalEntry[] theirs,
        DateTimeZone zone,
        Func<string, ImmutableArray<MeasuredTrial>> trials,
        Func<string, byte[]?> raw
    ) => Of(written, theirs, zone, new Once<Measured>(() => new Measured(trials(written.Athlete.Id))), raw);

    /// <summary>The same trials, events set by hand included, with what the tables and the journal say now.</summary>
    internal Dossier With(History written, JournalEntry[] theirs, DateTimeZone zone) =>
        new(written, JournalReading.Of(written, theirs, zone), _measured, _set);

    /// <summary>The same trials as measured, with the events that are set by hand now.</summary>
    internal Dossier CorrectedBy(
        History written,
        JournalEntry[] theirs,
        DateTimeZone zone,
        Func<string, byte[]?> raw
    ) => Of(written, theirs, zone, _measured, raw);

    private static Dossier Of(
        History written,
        JournalEntry[] theirs,
        DateTimeZone zone,
        Once<Measured> measured,
        Func<string, byte[]?> raw
    ) =>
        new(
            written,
            JournalReading.Of(written, theirs, zone),
            measured,
            new Once<Set>(() =>
            {
                (ImmutableArray<MeasuredTrial> trials, ImmutableArray<CorrectedTrial> corrected) =
                    JournalReading.Correct(measured.Value.Trials, theirs, raw);
                return new Set(trials, corrected);
            })
        );

    /// <summary>The same as it was before any work of that day or later.</summary>
    internal Dossier BeforeWorkOn(LocalDate day) =>
        new(
            Written,
            Bare with
            {
                Completed = [.. Bare.Completed.Where(c => c.Date < day)],
                PossiblyDone = [.. Bare.PossiblyDone.Where(p => p.Date < day)],
            },
            _measured,
            _set
        );

    /// <summary>The profile as known on that day, made once.</summary>
    public Profile ProfileOn(LocalDate day) =>
        _profiles.GetOrAdd(day, d => new Once<Profile>(() => Profiling.Of(History, d))).Value;

    /// <summary>Whether the trials are those of another, without reading them.</summary>
    internal bool HasTrialsOf(Dossier other) => ReferenceEquals(_set, other._set);

    private sealed record Measured(ImmutableArray<MeasuredTrial> Trials);

    private sealed record Set(ImmutableArray<MeasuredTrial> Trials, ImmutableArray<CorrectedTrial> Corrected);
}
