using System.Collections.Immutable;
using System.Text.Json;
using Jumpwright.Athletes;
using Jumpwright.Quantities;

namespace Jumpwright.Exercises;

/// <summary>The shape of one exercise's data file (docs/catalogue.md), and how it becomes an <see cref="Exercise"/>.</summary>
internal sealed record ExerciseFile
{
    public required string Id { get; init; }
    public required string Name { get; init; }
    public required string Stage { get; init; }
    public string? Family { get; init; }
    public required string Limb { get; init; }
    public required string Start { get; init; }
    public required string Arms { get; init; }
    public required string Landing { get; init; }
    public required string Intent { get; init; }
    public required int ContactsPerRep { get; init; }
    public required bool SingleLegLanding { get; init; }
    public required bool DepthJump { get; init; }
    public string? ExternalLoad { get; init; }
    public LoadPart? LoadRange { get; init; }
    public StepPart? RunUpSteps { get; init; }
    public Range? DropHeightM { get; init; }
    public Range? BoxHeightM { get; init; }
    public required ImmutableArray<KitNeed> Kit { get; init; }
    public required double MinutesPerSet { get; init; }
    public required DemandPart Demand { get; init; }
    public required TissueHours RecoveryHours { get; init; }
    public required ImmutableArray<string> Trains { get; init; }
    public required string Purpose { get; init; }
    public required string SetUp { get; init; }
    public required ImmutableArray<string> Cues { get; init; }
    public required ImmutableArray<FaultPart> Faults { get; init; }
    public required string Progress { get; init; }
    public required DosePart Dose { get; init; }
    public required string StopRule { get; init; }
    public bool? OwnStop { get; init; }
    public int? StopFaults { get; init; }
    public required ImmutableArray<string> Cautions { get; init; }
    public required ImmutableArray<EntryPart> Entry { get; init; }
    public required ImmutableArray<string> Regressions { get; init; }
    public required ImmutableArray<string> Progressions { get; init; }
    public string? PairsWith { get; init; }
    public required ImmutableArray<string> Sources { get; init; }

    /// <summary>Reads one data file.</summary>
    internal static Outcome<Exercise> Read(string name, string json)
    {
        try
        {
            ExerciseFile file =
                JsonSerializer.Deserialize(json, ExerciseShapes.File) ?? throw new JsonException("The file says null.");
            return file.ToExercise(name);
        }
        catch (JsonException e)
        {
            string where = e.LineNumber is { } line ? $" at line {line + 1}" : "";
            return new Refusal($"Exercise file {name} is not readable{where}: {e.Message}");
        }
    }

    /// <summary>A list that may be left out, as the files leave it out: with nothing in it.</summary>
    private static ImmutableArray<T> Given<T>(ImmutableArray<T> list) => list.IsDefault ? [] : list;

    private Outcome<Exercise> ToExercise(string name)
    {
        if (Stages.Parse(Stage) is not { } stage)
        {
            return Wrong(name, "stage", Stage, Stages.All);
        }

        if (StopFaults < 1)
        {
            return Wrong(name, "stop_faults", $"{StopFaults}", ["1", "2", "a greater whole number"]);
        }

        ImmutableArray<Quality>.Builder trains = ImmutableArray.CreateBuilder<Quality>();
        foreach (string word in Trains)
        {
            if (Parse<Quality>(word) is not { } quality)
            {
                return Wrong(name, "trains", word, Words<Quality>());
            }

            trains.Add(quality);
        }

        ImmutableArray<EntryCriterion>.Builder entry = ImmutableArray.CreateBuilder<EntryCriterion>();
        foreach (EntryPart part in Entry)
        {
            if (Parse<CriterionKind>(part.Kind) is not { } kind)
            {
                return Wrong(name, "entry kind", part.Kind, Words<CriterionKind>());
            }

            entry.Add(part.ToCriterion(kind));
        }

        ImmutableArray<DemandValue>.Builder values = ImmutableArray.CreateBuilder<DemandValue>();
        foreach (ValuePart part in Given(Demand.Values))
        {
            if (Parse<Tissue>(part.Tissue) is not { } tissue)
            {
                return Wrong(name, "demand value's tissue", part.Tissue, Words<Tissue>());
            }

            values.Add(new(tissue, part.Value, part.Unit, part.Source, part.Estimated, part.AtDropM));
        }

        return new Exercise
        {
            Id = Id,
            Name = Name,
            Stage = stage,
            Family = Family,
            Limb = Limb,
            Start = Start,
            Arms = Arms,
            Landing = Landing,
            Intent = Intent,
            ContactsPerRep = ContactsPerRep,
            SingleLegLanding = SingleLegLanding,
            IsDepthJump = DepthJump,
            ExternalLoad = ExternalLoad,
            Load = LoadRange?.ToRange(),
            RunUpSteps = RunUpSteps is { } steps ? new StepRange(steps.Min, steps.Max) : null,
            DropRangeM = DropHeightM?.ToHeights(),
            BoxRangeM = BoxHeightM?.ToHeights(),
            Kit = Kit,
            MinutesPerSet = MinutesPerSet,
            Demand = ByTissue(Demand.Achilles, Demand.Patellar, Demand.Hip, Demand.Bone),
            DemandValues = values.ToImmutable(),
            DemandBasis = Demand.Basis,
            RecoveryHours = ByTissue(
                RecoveryHours.Achilles,
                RecoveryHours.Patellar,
                RecoveryHours.Hip,
                RecoveryHours.Bone
            ),
            Trains = trains.ToImmutable(),
            Purpose = Purpose,
            SetUp = SetUp,
            Cues = Cues,
            Faults = [.. Faults.Select(f => new Fault(f.Seen, f.Mend))],
            Progress = Progress,
            Dose = Dose.ToRange(),
            StopRule = StopRule,
            HasOwnStop = OwnStop ?? true,
            StopsAtFaults = StopFaults,
            Cautions = Cautions,
            Entry = entry.ToImmutable(),
            Regressions = Regressions,
            Progressions = Progressions,
            PairsWith = PairsWith,
            Sources = Sources,
        };
    }

    private static Refusal Wrong(string name, string field, string seen, IEnumerable<string> known) =>
        new($"Exercise file {name}: {field} is '{seen}'; use one of {string.Join(", ", known)}.");

    private static TEnum? Parse<TEnum>(string word)
        where TEnum : struct, Enum =>
        Enum.GetValues<TEnum>().Cast<TEnum?>().FirstOrDefault(v => Word(v!.Value) == word);

    private static IEnumerable<string> Words<TEnum>()
        where TEnum : struct, Enum => Enum.GetValues<TEnum>().Select(Word);

    private static string Word<TEnum>(TEnum value)
        where TEnum : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());

    private static ImmutableDictionary<Tissue, int> ByTissue(int achilles, int patellar, int hip, int bone) =>
        ImmutableDictionary.CreateRange([
            KeyValuePair.Create(Tissue.Achilles, achilles),
            KeyValuePair.Create(Tissue.Patellar, patellar),
            KeyValuePair.Create(Tissue.Hip, hip),
            KeyValuePair.Create(Tissue.Bone, bone),
        ]);

    internal sealed record Range
    {
        public required double Min { get; init; }
        public required double Max { get; init; }

        internal HeightRange ToHeights() => new(Min, Max);
    }

    internal sealed record LoadPart
    {
        public required string Of { get; init; }
        public required double Min { get; init; }
        public required double Max { get; init; }
        public required string Source { get; init; }

        internal LoadRange ToRange() => new(Of, Min, Max, Source);
    }

    internal sealed record StepPart
    {
        public required int Min { get; init; }
        public required int Max { get; init; }
    }

    internal sealed record DemandPart
    {
        public required int Achilles { get; init; }
        public required int Patellar { get; init; }
        public required int Hip { get; init; }
        public required int Bone { get; init; }
        public ImmutableArray<ValuePart> Values { get; init; }
        public required string Basis { get; init; }
    }

    internal sealed record ValuePart
    {
        public required string Tissue { get; init; }
        public required double Value { get; init; }
        public required string Unit { get; init; }
        public required string Source { get; init; }
        public required bool Estimated { get; init; }
        public double? AtDropM { get; init; }
    }

    internal sealed record TissueHours
    {
        public required int Achilles { get; init; }
        public required int Patellar { get; init; }
        public required int Hip { get; init; }
        public required int Bone { get; init; }
    }

    internal sealed record FaultPart
    {
        public required string Seen { get; init; }
        public required string Mend { get; init; }
    }

    internal sealed record DosePart
    {
        public required int SetsMin { get; init; }
        public required int SetsMax { get; init; }
        public required int RepsMin { get; init; }
        public required int RepsMax { get; init; }
        public required int RestBetweenRepsS { get; init; }
        public required int RestBetweenSetsS { get; init; }
        public required string Source { get; init; }

        internal DoseRange ToRange() =>
            new(SetsMin, SetsMax, RepsMin, RepsMax, RestBetweenRepsS, RestBetweenSetsS, Source);
    }

    internal sealed record EntryPart
    {
        public required string Id { get; init; }
        public required string Kind { get; init; }
        public required string Text { get; init; }
        public required string Test { get; init; }
        public string? Task { get; init; }
        public required string Sense { get; init; }
        public required double Value { get; init; }
        public required string Unit { get; init; }
        public bool PerBodyMass { get; init; }
        public ImmutableArray<OtherPart> Or { get; init; }
        public required string Source { get; init; }

        internal EntryCriterion ToCriterion(CriterionKind kind) =>
            new(Id, kind, Text, Test, Task, Sense, Value, Unit, Source)
            {
                PerBodyMass = PerBodyMass,
                Alternatives =
                [
                    .. Given(Or).Select(o => new EntryAlternative(o.Test, o.Task, o.Value, o.Unit, o.Source)),
                ],
            };
    }

    internal sealed record OtherPart
    {
        public required string Test { get; init; }
        public string? Task { get; init; }
        public required double Value { get; init; }
        public required string Unit { get; init; }
        public required string Source { get; init; }
    }
}
