using System.Collections.Immutable;
using Jumpwright.Athletes;
using Jumpwright.Exercises;
using Jumpwright.Progression;
using Jumpwright.Quantities;
using NodaTime;

namespace Jumpwright.Plans.Asking;

/// <summary>
/// What training is worth to one athlete, in points. The weights are a house rule: they order wishes, they are not
/// effects. A quality weighs the more, the surer it is that it limits the athlete; sets of a quality have falling returns
/// over a week; an exercise adds a little for being new to them, for not having been done lately, for being a skill, and
/// for its second quality. With a sore Achilles tendon pushing to a box comes first and landing on the floor last (common
/// practice): the usual order of the stages is no rule there.
/// </summary>
internal sealed class Wanting(
    Profile profile,
    Ladder ladder,
    History history,
    LocalDate asOf,
    bool soreAchilles = false
)
{
    /// <summary>What an untested quality is taken to weigh: trained, but not first.</summary>
    private const double Untested = 0.35;

    /// <summary>With a sore Achilles tendon: at least, and at most.</summary>
    private const double SorePush = 0.8;
    private const double SoreLanding = 0.1;

    private const int FreshAfterDays = 14;

    /// <summary>How much the quality limits the athlete, 0 to 1, as weight.</summary>
    public double WeightOf(Quality quality)
    {
        Finding? finding = FindingOf(quality);
        double weight = finding is null ? Untested : Math.Clamp(finding.Probability ?? Untested, 0, 1);
        return soreAchilles && quality == Quality.Push ? Math.Max(weight, SorePush)
            : LeastWhileSore(quality) ? Math.Min(weight, SoreLanding)
            : weight;
    }

    /// <summary>Landing and hops with a sore Achilles tendon: left over for what pushing to a box does not fill, and no variety in it.</summary>
    private bool LeastWhileSore(Quality quality) =>
        soreAchilles && quality is (Quality.Landing or Quality.AnkleStiffness);

    /// <summary>The finding about a quality, or null.</summary>
    public Finding? FindingOf(Quality quality) => profile.Findings.FirstOrDefault(f => f.Quality == quality);

    /// <summary>Points of the first, second, … set of a week that trains the quality first.</summary>
    public ImmutableArray<int> GoalPoints(Quality quality)
    {
        double weight = WeightOf(quality);
        double most = 4 + (16 * weight);
        int sets = (int)Math.Round(5 + (9 * weight));
        return [.. Enumerable.Range(0, sets).Select(n => (int)Math.Round(most * (sets - n) / sets))];
    }

    /// <summary>Points of the first, second, … set of an exercise in a session, beyond its goal.</summary>
    public ImmutableArray<int> ItemPoints(Exercise exercise, int sets)
    {
        if (LeastWhileSore(exercise.Trains[0]))
        {
            return [.. Enumerable.Repeat(0, sets)];
        }

        double second = exercise.Trains.Skip(1).Select(q => 2 * WeightOf(q)).DefaultIfEmpty(0).Max();
        bool isNew = ladder.Find(exercise.Id) is { State: RungState.Open };
        bool fresh = !history.Completed.Any(c =>
            c.ExerciseId == exercise.Id && c.Date <= asOf && Period.DaysBetween(c.Date, asOf) <= FreshAfterDays
        );
        bool skill = exercise.Stage == Stage.RunUp;
        double box = soreAchilles && exercise.Stage == Stage.PushToBox ? 8 : 0;
        double first = 3 + box + (isNew ? 3 : 0) + (fresh ? 2 : 0) + (skill ? 3 : 0) + second;
        return
        [
            .. Enumerable.Range(0, sets).Select(n => (int)Math.Round(n == 0 ? first : Math.Max(0, second + 2 - n))),
        ];
    }

    /// <summary>Why the exercise is wished, most important first.</summary>
    public ImmutableArray<Sentence> Because(Exercise exercise)
    {
        var because = ImmutableArray.CreateBuilder<Sentence>();
        Quality quality = exercise.Trains[0];
        because.Add(
            FindingOf(quality) switch
            {
                { Verdict: FindingVerdict.Limits } f => Limits(quality, f.Sentence),
                { Verdict: FindingVerdict.Unclear } f => MayLimit(quality, f.Sentence),
                { Verdict: FindingVerdict.Sound } f => IsKeptUp(quality, f.Sentence),
                { NextTest: { } test } => $"{Word(quality)} is trained, not yet tested; what would settle it: {test}.",
                { } f => $"{Word(quality)} is trained, not yet tested: {f.Sentence}",
                null => $"{Word(quality)} is trained, not yet tested.",
            }
        );
        if (soreAchilles && exercise.Stage == Stage.PushToBox)
        {
            because.Insert(0, $"The Achilles tendon is sore: pushing to a box comes before landing and hops.");
        }

        if (ladder.Find(exercise.Id) is { State: RungState.Open })
        {
            because.Add(Sentence.Of($"Open, not yet owned: clean sessions make it owned.").As(new OpenStep()));
        }

        return because.ToImmutable();
    }

    /// <summary>That a quality holds somebody back.</summary>
    private static Sentence Limits(Quality quality, Sentence known) =>
        Sentence.Of($"{Word(quality)} limits: {known}").As(new WantedFor(quality, FindingVerdict.Limits));

    /// <summary>That it may.</summary>
    private static Sentence MayLimit(Quality quality, Sentence known) =>
        Sentence.Of($"{Word(quality)} may limit: {known}").As(new WantedFor(quality, FindingVerdict.Unclear));

    /// <summary>That it doesn't, and is kept so.</summary>
    private static Sentence IsKeptUp(Quality quality, Sentence known) =>
        Sentence.Of($"{Word(quality)} is kept up: {known}").As(new WantedFor(quality, FindingVerdict.Sound));

    /// <summary>A quality as a sentence begins with it.</summary>
    public static Sentence Word(Quality quality) => $"{QualityNames.Of(quality):capital}";
}
