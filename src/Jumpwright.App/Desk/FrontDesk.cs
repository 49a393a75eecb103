using System.Collections.Immutable;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Jumpwright.Storage.Stores;
using NodaTime;

namespace Jumpwright.App.Desk;

/// <summary>
/// What the pages work on: the book as it stands now, and the few ways in which it changes. Readers take the book once and
/// see one state of it; writers stand in line.
/// </summary>
public sealed class FrontDesk : IDisposable
{
    private readonly OpenedSquad _opened;
    private readonly SolveBudget? _budget;
    private readonly int _weeks;
    private readonly Lock _writing = new();
    private readonly Lock _plans = new();
    private CancellationTokenSource? _search;
    private Task _searching = Task.CompletedTask;
    private volatile State _state;

    /// <summary>Opens the desk on a day; nothing is planned yet.</summary>
    /// <param name="opened">The squad; the desk closes it.</param>
    /// <param name="day">The day the decisions are for.</param>
    /// <param name="weeks">How many weeks are planned.</param>
    /// <param name="budget">How the planner may work; null takes its defaults.</param>
    public FrontDesk(OpenedSquad opened, LocalDate day, int weeks, SolveBudget? budget = null)
    {
        _opened = opened;
        _budget = budget;
        _weeks = weeks;
        Catalogue catalogue = opened.Material.Catalogue;
        var book = new Workbook(
            opened.Material,
            day,
            catalogue,
            Bookkeeping.Leaves(opened.Material, catalogue, day),
            new Refusal("Nothing is planned yet.")
        );
        _state = new State(book, new PictureBook(book.Material), null, false);
    }

    /// <summary>Everything the pages show, as of now.</summary>
    public Workbook Book => _state.Book;

    /// <summary>The pictures of the book's athletes.</summary>
    public PictureBook Pictures => _state.Pictures;

    /// <summary>The search that is under way; null when there is none.</summary>
    public Planning? Planning => _state.Planning;

    /// <summary>Whether something was written since the plan was made.</summary>
    public bool PlanIsOld => _state.PlanIsOld;

    /// <summary>The journal, in the order in which it came in.</summary>
    public ImmutableArray<JournalEntry> Journal => _opened.Entries;

    internal OpenedSquad Opened => _opened;

    /// <summary>Writes to the journal. Once this returns the entries are on the disk and the book follows them.</summary>
    public JournalReceipt Write(params IReadOnlyList<JournalEntry> entries)
    {
        lock (_writing)
        {
            JournalReceipt receipt = _opened.Append(entries);
            if (receipt.Added.Length > 0)
            {
                Follow();
            }

            return receipt;
        }
    }

    /// <summary>Does something to the squad while nobody else writes; the book follows it.</summary>
    internal T Change<T>(Func<OpenedSquad, T> change)
    {
        lock (_writing)
        {
            T done = change(_opened);
            Follow();
            return done;
        }
    }

    /// <summary>Plans and waits for it.</summary>
    public void Plan(IProgress<string>? progress, CancellationToken cancel)
    {
        Workbook book = _state.Book;
        Outcome<PlannedWeek> week = Bookkeeping.Plan(
            book.Material,
            book.Catalogue,
            book.Day,
            _weeks,
            _budget,
            progress,
            cancel,
            book.PlanOrNull is { Plan.Status: PlanStatus.Optimal or PlanStatus.Feasible } planned ? planned.Plan : null
        );
        lock (_writing)
        {
            _state = _state with
            {
                Book = _state.Book with { Week = week },
                PlanIsOld = !ReferenceEquals(_state.Book.Material, book.Material),
            };
        }
    }

    /// <summary>Shows a plan that was made before.</summary>
    public void Show(PlannedWeek week)
    {
        lock (_writing)
        {
            _state = _state with { Book = _state.Book with { Week = week }, PlanIsOld = false };
        }
    }

    /// <summary>Begins to plan; a search that is under way is left to end.</summary>
    public void StartPlanning()
    {
        lock (_plans)
        {
            if (!_searching.IsCompleted)
            {
                return;
            }

            _search?.Dispose();
            _search = new CancellationTokenSource();
            CancellationToken cancel = _search.Token;
            Say("Planning begins.");
            _searching = Task.Run(
                () =>
                {
                    try
                    {
                        Plan(new Telling(Say), cancel);
                    }
                    catch (OperationCanceledException)
                    {
                        // The plan that was there stays.
                    }
                    catch (Exception e) when (e is not OutOfMemoryException)
                    {
                        lock (_writing)
                        {
                            var fault = new Refusal(
                                $"Planning ended by a fault in this program ({e.GetType().Name}); report it. Nothing new is planned."
                            );
                            _state = _state with { Book = _state.Book with { Week = fault } };
                        }
                    }
                    finally
                    {
                        lock (_writing)
                        {
                            _state = _state with { Planning = null };
                        }
                    }
                },
                CancellationToken.None
            );
        }
    }

    /// <summary>Ends a search; the plan that was there stays.</summary>
    public void StopPlanning()
    {
        lock (_plans)
        {
            _search?.Cancel();
        }
    }

    public void Dispose()
    {
        StopPlanning();
        try
        {
            _searching.Wait(TimeSpan.FromSeconds(10));
        }
        catch (AggregateException)
        {
            // Its own end says nothing to whoever closes the desk.
        }

        _search?.Dispose();
        _opened.Dispose();
    }

    private void Say(string words)
    {
        lock (_writing)
        {
            _state = _state with { Planning = new Planning(words) };
        }
    }

    /// <summary>The book after the squad's material changed: only leaves whose history changed are made anew.</summary>
    private void Follow()
    {
        Workbook before = _state.Book;
        SquadMaterial now = _opened.Material;
        if (ReferenceEquals(before.Material, now))
        {
            return;
        }

        ImmutableArray<AthleteLeaf> leaves = Bookkeeping.Leaves(
            now,
            now.Catalogue,
            before.Day,
            // Another catalogue opens and closes other rungs.
            now.Catalogue.Exercises.SequenceEqual(before.Catalogue.Exercises)
                ? before.Leaves
                : []
        );
        _state = _state with
        {
            Book = before with { Material = now, Catalogue = now.Catalogue, Leaves = leaves },
            Pictures = new PictureBook(now),
            PlanIsOld = before.PlanOrNull is not null,
        };
    }

    private sealed record State(Workbook Book, PictureBook Pictures, Planning? Planning, bool PlanIsOld);

    private sealed class Telling(Action<string> tell) : IProgress<string>
    {
        public void Report(string value) => tell(value);
    }
}
