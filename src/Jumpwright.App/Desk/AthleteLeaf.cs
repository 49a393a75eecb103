using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>One athlete's leaf in the book: what is known on the day, and what follows from it, worked out when first asked for.</summary>
public sealed class AthleteLeaf
{
    private readonly Once<Worked> _worked;

    internal AthleteLeaf(Dossier dossier, Catalogue catalogue, HashSet<string> exercises, LocalDate day)
    {
        Dossier = dossier;
        _worked = new Once<Worked>(() =>
        {
            Profile profile = dossier.ProfileOn(day);
            ImmutableArray<Ruling> rulings = SafetyRules.For(dossier.History, day, exercises);
            return new Worked(
                BarredTests.In(profile, rulings, catalogue),
                Ladders.For(profile, dossier.History, catalogue, day, rulings),
                rulings
            );
        });
    }

    public Athlete Athlete => Dossier.Athlete;

    public History History => Dossier.History;

    public Profile Profile => _worked.Value.Profile;

    public Ladder Ladder => _worked.Value.Ladder;

    public ImmutableArray<Ruling> Rulings => _worked.Value.Rulings;

    /// <summary>Whether it is worked out, so that asking costs nothing.</summary>
    public bool IsWorkedOut => _worked.IsMade;

    internal Dossier Dossier { get; }

    /// <summary>Works it out now.</summary>
    internal void WorkOut() => _ = _worked.Value;

    private sealed record Worked(Profile Profile, Ladder Ladder, ImmutableArray<Ruling> Rulings);
}
