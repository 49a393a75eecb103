using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Safety;

namespace Jumpwright.Exercises;

/// <summary>One exercise of the catalogue, as its data file says.</summary>
public sealed record Exercise
{
    public required string Id { get; init; }
    public required string Name { get; init; }

    /// <summary>Its name in a sentence.</summary>
    public SaidExercise Said => new(Id, Name);

    /// <summary>Its id in a sentence, as files have it.</summary>
    public SaidExercise SaidId => SaidExercise.ById(Id);

    public required Stage Stage { get; init; }

    /// <summary>The family of variants it belongs to (one leg or two, single or continuous, another direction, another load); null: none.</summary>
    public string? Family { get; init; }

    /// <summary>both, left, right, each or alternating.</summary>
    public required string Limb { get; init; }

    /// <summary>floor, box, seat, foot-on-box, run-up, …</summary>
    public required string Start { get; init; }

    /// <summary>free, hips, held …</summary>
    public required string Arms { get; init; }

    /// <summary>Where it lands: floor, box, none.</summary>
    public required string Landing { get; init; }

    /// <summary>submaximal or maximal.</summary>
    public required string Intent { get; init; }

    /// <summary>Ground contacts a rep that take an impact or a rebound.</summary>
    public required int ContactsPerRep { get; init; }

    /// <summary>The same with both legs' where each works in turn.</summary>
    public int ContactsOfOneRep => ContactsPerRep * (Limb == "each" ? 2 : 1);

    public required ImmutableArray<KitNeed> Kit { get; init; }

    /// <summary>Minutes from the start of a set to the start of the next, rest included.</summary>
    public required double MinutesPerSet { get; init; }

    /// <summary>Demand tier of one contact (or one lift) on one leg's tissue, 0 (none) to 3 (top); docs/catalogue.md says what a tier means.</summary>
    public required ImmutableDictionary<Tissue, int> Demand
    {
        get;
        init
        {
            field = value;
            TopTier = Most(value);
        }
    }

    /// <summary>The highest tier it asks of any tissue.</summary>
    public int TopTier { get; private init; }

    /// <summary>Numbers behind the tiers, where there are any.</summary>
    public ImmutableArray<DemandValue> DemandValues { get; init; } = [];

    /// <summary>How the tiers were got: published values, or estimated and how.</summary>
    public required string DemandBasis { get; init; }

    /// <summary>The same as a sentence: what ships is said in every language, what a squad wrote stays as it is.</summary>
    public Sentence DemandBasisSaid => Sentence.OfCatalogue(DemandBasis);

    /// <summary>Hours from the end of a session with this exercise to the start of the next that works the tissue hard again.</summary>
    public required ImmutableDictionary<Tissue, int> RecoveryHours
    {
        get;
        init
        {
            field = value;
            MostRecoveryHours = Most(value);
        }
    }

    /// <summary>The longest recovery it asks for any tissue, h.</summary>
    public int MostRecoveryHours { get; private init; }

    /// <summary>Qualities it trains, the first most.</summary>
    public required ImmutableArray<Athletes.Quality> Trains { get; init; }

    public required string Purpose { get; init; }
    public required string SetUp { get; init; }
    public required ImmutableArray<string> Cues { get; init; }
    public required ImmutableArray<Fault> Faults { get; init; }

    /// <summary>What to watch or measure to see that it gets better.</summary>
    public required string Progress { get; init; }
    public required DoseRange Dose { get; init; }
    public required string StopRule { get; init; }

    /// <summary>Whether its stop rule ends it by something that no dose says in numbers, so that it stands on the card beside them.</summary>
    public bool HasOwnStop { get; init; } = true;

    /// <summary>Landing faults at which it is stopped where that is stricter than the limit of all; null: as the limit says.</summary>
    public int? StopsAtFaults { get; init; }
    public required ImmutableArray<string> Cautions { get; init; }
    public required ImmutableArray<EntryCriterion> Entry { get; init; }
    public required ImmutableArray<string> Regressions { get; init; }
    public required ImmutableArray<string> Progressions { get; init; }

    /// <summary>Exercise that pairs with it (heavy pull with light jump), or null.</summary>
    public string? PairsWith { get; init; }

    /// <summary>True when every contact, or some, is taken on one leg.</summary>
    public required bool SingleLegLanding { get; init; }

    public required bool IsDepthJump { get; init; }

    /// <summary>bar, band or null.</summary>
    public string? ExternalLoad { get; init; }

    /// <summary>
    /// Range of heights stepped from, m; null when there is no drop. It lies below 0.30 m or from 0.30 m up, never across,
    /// so that an exercise is of high intensity at every height or at none.
    /// </summary>
    public HeightRange? DropRangeM { get; init; }

    /// <summary>Usual external load; null without a bar. A band's pull is not a share: it is measured.</summary>
    public LoadRange? Load { get; init; }

    /// <summary>Usual run-up; null without one.</summary>
    public StepRange? RunUpSteps { get; init; }

    /// <summary>Range of landing-box heights, m; null when there is no box to land on.</summary>
    public HeightRange? BoxRangeM { get; init; }

    public required ImmutableArray<string> Sources { get; init; }

    private static int Most(ImmutableDictionary<Tissue, int> ofTissues) =>
        ofTissues.IsEmpty ? 0 : ofTissues.Values.Max();

    /// <summary>Top tier on any tissue, or a drop of 0.30 m or more (<c>common practice</c>).</summary>
    public bool IsHighIntensityAt(double? dropHeightM) => TopTier >= 3 || (dropHeightM is { } h && h >= 0.30 - 1e-9);

    /// <summary>High intensity at the lowest height it is done from, and so at every one.</summary>
    public bool IsHighIntensity => IsHighIntensityAt(DropRangeM?.MinM);

    /// <summary>What safety rules on, at the lowest height it is done from.</summary>
    public ExerciseFacts Facts => FactsAt(DropRangeM?.MinM);

    /// <summary>What safety rules on, at that drop height.</summary>
    public ExerciseFacts FactsAt(double? dropHeightM) =>
        new(
            Id,
            Stage.ToString(),
            Demand,
            dropHeightM,
            IsDepthJump,
            SingleLegLanding,
            IsHighIntensityAt(dropHeightM),
            ContactsPerRep > 0,
            ExternalLoad is not null
        )
        {
            LandsOnFloor = Landing is not ("box" or "none"),
        };
}
