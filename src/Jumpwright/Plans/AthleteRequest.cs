using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Jumpwright.Athletes;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using Jumpwright.Safety;
using NodaTime;

namespace Jumpwright.Plans;

/// <summary>What the planner may give one athlete.</summary>
/// <param name="Athlete">Who.</param>
/// <param name="ContactsPerSessionAtMost">Of all items of a session; a ruling of the day may ask for fewer.</param>
/// <param name="ContactsPerWeekAtMost">Of all sessions of a week, Monday to Sunday.</param>
/// <param name="ExercisesPerSessionAtMost">Different exercises in a session.</param>
/// <param name="Menu">What is open to them, session by session.</param>
/// <param name="Recent">What was done shortly before the plan starts.</param>
/// <param name="RulingsByDay">Safety's rulings for the days of the plan.</param>
/// <param name="Unmet">What was wished and never came on the menu, with what forbids it.</param>
public sealed record AthleteRequest(
    Athlete Athlete,
    int ContactsPerSessionAtMost,
    int ContactsPerWeekAtMost,
    int ExercisesPerSessionAtMost,
    ImmutableArray<MenuItem> Menu,
    ImmutableArray<RecentWork> Recent,
    ImmutableDictionary<LocalDate, ImmutableArray<Ruling>> RulingsByDay,
    ImmutableArray<Unmet> Unmet
)
{
    /// <summary>Menus by session and exercise, kept as long as the menu is: limits ask for entries by the hundred thousand.</summary>
    private static readonly ConditionalWeakTable<MenuItem[], Dictionary<(string, string), MenuItem>> MenuIndex = [];

    /// <summary>Variants of one exercise in a session, as <see cref="Variants"/> counts them.</summary>
    public int VariantsPerSessionAtMost { get; init; } = 1;

    /// <summary>Days before a fixture, its own beside them, on which no landing on the floor loads a sore tissue. House rule.</summary>
    public int SoreLandingDaysBeforeFixture { get; init; } = LimitBook.Standard.Whole(SoreBeforeFixture.LimitId);

    /// <summary>From which boxes the log shows clean sessions; where none are known, only the first step is open.</summary>
    public TrainedDrops Drops { get; init; } = TrainedDrops.None;

    /// <summary>How far a box may stand above the one before, m. House rule.</summary>
    public double DropStepM { get; init; } = LimitBook.Standard["drop-step"];

    /// <summary>Fewest exercises of a session that holds any at all.</summary>
    public int ExercisesPerSessionAtLeast { get; init; }

    /// <summary>High-intensity contacts of a session. House rule.</summary>
    public int HighIntensityContactsPerSessionAtMost { get; init; } = 40;

    /// <summary>What training each quality is worth, week by week.</summary>
    public ImmutableArray<QualityGoal> Goals { get; init; } = [];

    /// <summary>Contrast pairs that may be formed.</summary>
    public ImmutableArray<ContrastPair> Pairs { get; init; } = [];

    /// <summary>At-most limits on what items of several sessions add up to.</summary>
    public ImmutableArray<LoadCap> Caps { get; init; } = [];

    /// <summary>How a tissue's demand may grow from week to week of the plan.</summary>
    public ImmutableArray<LoadGrowth> Growths { get; init; } = [];

    /// <summary>Sessions in which work of theirs is logged already: what is done there counts as done, and nothing is planned there again.</summary>
    public ImmutableArray<string> Begun { get; init; } = [];

    /// <summary>Jumps of practices and matches as they enter the limits, in sentences.</summary>
    public ImmutableArray<Sentence> OtherJumping { get; init; } = [];

    /// <summary>What the coach is asked to look at, in sentences; it closes nothing.</summary>
    public ImmutableArray<Sentence> Prompts { get; init; } = [];

    /// <summary>The menu's entry for an exercise in a session, or null when it is not open there.</summary>
    public MenuItem? OnMenu(string sessionId, string exerciseId) =>
        Menu.IsDefaultOrEmpty
            ? null
            : MenuIndex
                .GetValue(ImmutableCollectionsMarshal.AsArray(Menu)!, Index)
                .GetValueOrDefault((sessionId, exerciseId));

    private static Dictionary<(string, string), MenuItem> Index(MenuItem[] menu)
    {
        Dictionary<(string, string), MenuItem> index = new(menu.Length);
        foreach (MenuItem item in menu)
        {
            // The first of a name counts.
            index.TryAdd((item.SessionId, item.ExerciseId), item);
        }

        return index;
    }

    /// <summary>Safety's rulings of that day.</summary>
    public ImmutableArray<Ruling> RulingsOn(LocalDate day) => RulingsByDay.GetValueOrDefault(day, []);

    /// <summary>Contacts allowed on that day: the level's or, if a ruling of the day asks for fewer, the ruling's.</summary>
    public int ContactsAtMostOn(LocalDate day) => ContactCaps.OnDay(ContactsPerSessionAtMost, RulingsOn(day));

    /// <summary>
    /// Seconds that a contrast pair takes beyond its sets, counted with its heavy exercise: where the rest within the pair
    /// is longer than the heavy exercise's own rest between sets, the difference, once a round. 0 for anything else.
    /// </summary>
    public int PairSeconds(MenuItem heavy, int rounds) =>
        Pairs.FirstOrDefault(p => p.SessionId == heavy.SessionId && p.HeavyExerciseId == heavy.ExerciseId) is { } pair
            ? rounds * Math.Max(0, pair.RestS - heavy.Dose.RestBetweenSetsS)
            : 0;
}
