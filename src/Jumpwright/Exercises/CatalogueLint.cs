using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;

namespace Jumpwright.Exercises;

/// <summary>Judges a catalogue: what a coach's edit could break, each as one sentence. No sentence means it holds.</summary>
public static class CatalogueLint
{
    private static readonly string[] Limbs = ["both", "left", "right", "each", "alternating"];
    private static readonly string[] Intents = ["submaximal", "maximal"];
    private static readonly string[] Starts = ["floor", "box", "seat", "foot-on-box", "bench", "run-up"];
    private static readonly string[] Landings = ["floor", "box", "none"];
    private static readonly string[] Loads = ["bar", "band"];
    private static readonly string[] LoadBases = ["body-mass", "hex-bar-test"];
    private static readonly string[] Senses = ["at-least", "at-most"];

    /// <summary>All that is wrong with the catalogue, in its order.</summary>
    public static ImmutableArray<string> Check(Catalogue catalogue) =>
        [
            .. catalogue.Exercises.SelectMany(e => Fields(e, catalogue)),
            .. catalogue.Exercises.SelectMany(e => Demands(e)),
            .. catalogue.Exercises.SelectMany(e => Values(e)),
            .. catalogue.Exercises.SelectMany(e => Entries(e, catalogue)),
            .. catalogue.Exercises.SelectMany(e => Edges(e, catalogue)),
            .. Families(catalogue),
            .. Orphans(catalogue),
            .. Cycles(catalogue, "progressions", e => e.Progressions),
            .. Cycles(catalogue, "regressions", e => e.Regressions),
            .. Cycles(catalogue, "owned criteria", Needs),
        ];

    private static IEnumerable<string> Fields(Exercise e, Catalogue catalogue)
    {
        if (!Kebab.Is(e.Id))
        {
            yield return $"{e.Id}: the id is not kebab-case.";
        }

        (string Field, string Text)[] texts =
        [
            ("name", e.Name),
            ("arms", e.Arms),
            ("demand basis", e.DemandBasis),
            ("purpose", e.Purpose),
            ("set_up", e.SetUp),
            ("progress", e.Progress),
            ("stop_rule", e.StopRule),
            .. e.Cues.Select(c => ("cue", c)),
            .. e.Faults.Select(f => ("fault seen", f.Seen)),
            .. e.Faults.Select(f => ("fault mend", f.Fix)),
            .. e.Cautions.Select(c => ("caution", c)),
        ];
        foreach ((string field, string _) in texts.Where(t => string.IsNullOrWhiteSpace(t.Text)))
        {
            yield return $"{e.Id}: {field} is empty.";
        }

        (string Field, string Word, string[] Known)[] words =
        [
            ("limb", e.Limb, Limbs),
            ("start", e.Start, Starts),
            ("landing", e.Landing, Landings),
            ("intent", e.Intent, Intents),
        ];
        foreach ((string field, string word, string[] known) in words.Where(w => !w.Known.Contains(w.Word)))
        {
            yield return $"{e.Id}: {field} is '{word}'; use one of {string.Join(", ", known)}.";
        }

        if (e.ExternalLoad is { } load && !Loads.Contains(load))
        {
            yield return $"{e.Id}: external_load is '{load}'; use one of {string.Join(", ", Loads)} or leave it out.";
        }

        if (e.Cues.Length != 2)
        {
            yield return $"{e.Id}: it has {e.Cues.Length} cues; two are what an athlete can hold.";
        }

        if (e.Faults.Length < 3)
        {
            yield return $"{e.Id}: it has {e.Faults.Length} faults; give at least three, each with its mend.";
        }

        if (e.Cautions.IsEmpty)
        {
            yield return $"{e.Id}: it has no caution.";
        }

        if (e.Trains.IsEmpty || e.Trains.Distinct().Count() != e.Trains.Length)
        {
            yield return $"{e.Id}: trains must name qualities, each once.";
        }

        if (e.Sources.IsEmpty)
        {
            yield return $"{e.Id}: it has no source.";
        }

        IEnumerable<string> cited =
        [
            .. e.Sources,
            e.Dose.SourceId,
            .. CitedByEntries(e),
            .. e.Load is { } l ? [l.SourceId] : Array.Empty<string>(),
            .. e.DemandValues.Select(v => v.SourceId),
        ];
        foreach (string id in cited.Distinct(StringComparer.Ordinal).Where(id => !catalogue.Sources.ContainsKey(id)))
        {
            yield return $"{e.Id}: the source '{id}' is not in the bibliography.";
        }

        foreach (KitNeed need in e.Kit.Where(k => k.Count < 1 || !KitIds.All.Contains(k.Id)))
        {
            yield return $"{e.Id}: kit '{need.Id}' × {need.Count} is not a known kit in a count of at least 1.";
        }

        if (e.Kit.Select(k => k.Id).Distinct(StringComparer.Ordinal).Count() != e.Kit.Length)
        {
            yield return $"{e.Id}: a kit stands twice.";
        }

        foreach (string sentence in Doses(e).Concat(Heights(e)))
        {
            yield return sentence;
        }
    }

    private static IEnumerable<string> CitedByEntries(Exercise e) =>
        e.Entry.SelectMany(c => c.Alternatives.Select(a => a.SourceId).Prepend(c.SourceId));

    private static IEnumerable<string> Doses(Exercise e)
    {
        DoseRange d = e.Dose;
        if (d.SetsMin < 1 || d.SetsMax < d.SetsMin || d.RepsMin < 1 || d.RepsMax < d.RepsMin)
        {
            yield return $"{e.Id}: the dose range {d.SetsMin}-{d.SetsMax} × {d.RepsMin}-{d.RepsMax} is not a range.";
        }

        if (d.RestBetweenRepsS < 0 || d.RestBetweenSetsS < 0)
        {
            yield return $"{e.Id}: a rest is negative.";
        }

        if (!double.IsFinite(e.MinutesPerSet) || e.MinutesPerSet < d.RestBetweenSetsS / 60.0 || e.MinutesPerSet > 15)
        {
            yield return $"{e.Id}: minutes_per_set {e.MinutesPerSet} does not hold the rest between sets ({d.RestBetweenSetsS} s), or is over 15.";
        }

        if (e.ContactsPerRep is < 0 or > 4)
        {
            yield return $"{e.Id}: contacts_per_rep is {e.ContactsPerRep}; 0 to 4 are known.";
        }

        if (e.ContactsPerRep == 0 != (e.Landing == "none"))
        {
            yield return $"{e.Id}: contacts_per_rep is {e.ContactsPerRep} and it lands on '{e.Landing}': only what never lands has no contact.";
        }
    }

    private static IEnumerable<string> Heights(Exercise e)
    {
        foreach ((string field, HeightRange? range) in new[] { ("drop", e.DropRangeM), ("box", e.BoxRangeM) })
        {
            if (range is { } r && !(r.MinM > 0 && r.MaxM >= r.MinM && r.MaxM <= 1.5))
            {
                yield return $"{e.Id}: the {field} range {r.MinM}-{r.MaxM} m is not a range of heights up to 1.5 m.";
            }
        }

        if (e.DropRangeM is { } drop && e.IsHighIntensityAt(drop.MinM) != e.IsHighIntensityAt(drop.MaxM))
        {
            yield return $"{e.Id}: its drops run across 0.30 m, so it is of high intensity at some heights only: split it.";
        }

        if ((e.ExternalLoad == "bar") != (e.Load is not null))
        {
            yield return $"{e.Id}: a bar and a load range go together.";
        }

        if (
            e.Load is { } load
            && !(
                LoadBases.Contains(load.Of) && load.MinShare > 0 && load.MaxShare >= load.MinShare && load.MaxShare <= 1
            )
        )
        {
            yield return $"{e.Id}: the load range {load.MinShare}-{load.MaxShare} of '{load.Of}' is not a range of shares of {string.Join(" or ", LoadBases)}.";
        }

        if ((e.Start == "run-up") != (e.RunUpSteps is { Min: > 0 } steps && steps.Max >= steps.Min))
        {
            yield return $"{e.Id}: a run-up and a range of steps go together.";
        }

        if (e.IsDepthJump && e.DropRangeM is null)
        {
            yield return $"{e.Id}: a depth jump needs its drop range.";
        }

        if (e.IsDepthJump && e.ContactsPerRep != 2)
        {
            yield return $"{e.Id}: a depth jump has two contacts, off the box and after the rebound.";
        }

        if (e.DropRangeM is not null && !e.Kit.Any(k => k.Id == "drop-box"))
        {
            yield return $"{e.Id}: it steps off a box but its kit has no drop-box.";
        }

        if ((e.Landing == "box") != (e.BoxRangeM is not null))
        {
            yield return $"{e.Id}: landing on a box and a range of box heights go together.";
        }
    }

    private static IEnumerable<string> Demands(Exercise e)
    {
        foreach (Tissue tissue in Enum.GetValues<Tissue>())
        {
            if (!e.Demand.TryGetValue(tissue, out int tier) || tier is < 0 or > 3)
            {
                yield return $"{e.Id}: the demand on {Name(tissue)} is missing or not a tier from 0 to 3.";
                continue;
            }

            if (!e.RecoveryHours.TryGetValue(tissue, out int hours) || hours is < 0 or > 168)
            {
                yield return $"{e.Id}: the recovery hours of {Name(tissue)} are missing or not within a week.";
            }
            else if (tier == 3 && hours < 48)
            {
                yield return $"{e.Id}: the top tier on {Name(tissue)} needs at least 48 h, not {hours} (handbook-potach-chu: 48-72 h).";
            }
            else if (tier == 0 && hours > 0)
            {
                yield return $"{e.Id}: it asks nothing of {Name(tissue)} but wants {hours} h of recovery.";
            }
        }
    }

    /// <summary>A number and its tier are two words for one thing; they must not contradict each other.</summary>
    private static IEnumerable<string> Values(Exercise e)
    {
        foreach (DemandValue v in e.DemandValues)
        {
            string unit = v.Tissue == Tissue.Patellar ? "1" : DemandValue.BodyWeights;
            if (v.Unit != unit)
            {
                yield return $"{e.Id}: the value for {Name(v.Tissue)} is in '{v.Unit}', not in '{unit}'.";
            }

            if (DemandTiers.Of(v.Tissue, v.Value) is { } tier && tier != Tier(e, v.Tissue))
            {
                yield return FormattableString.Invariant(
                    $"{e.Id}: {v.Value} {v.Unit} on {Name(v.Tissue)} is tier {tier}, but its file says {Tier(e, v.Tissue)}."
                );
            }

            if (v.AtDropM is not null && e.DropRangeM is null)
            {
                yield return $"{e.Id}: a value holds for a drop, but it steps off nothing.";
            }
        }

        if (e.DemandValues.Select(v => v.Tissue).Distinct().Count() != e.DemandValues.Length)
        {
            yield return $"{e.Id}: a tissue has two values.";
        }
    }

    private static IEnumerable<string> Entries(Exercise e, Catalogue catalogue)
    {
        foreach (EntryCriterion c in e.Entry)
        {
            if (!Kebab.Is(c.Id) || string.IsNullOrWhiteSpace(c.Text))
            {
                yield return $"{e.Id}: entry criterion '{c.Id}' needs a kebab-case id and a text.";
            }

            if (!Senses.Contains(c.Sense) || !double.IsFinite(c.Value))
            {
                yield return $"{e.Id}: entry criterion '{c.Id}' needs at-least or at-most and a number.";
            }

            if (c.OwnedExercise is { } owned)
            {
                if (catalogue.Find(owned) is null)
                {
                    yield return $"{e.Id}: entry criterion '{c.Id}' asks to own '{owned}', which is not in the catalogue.";
                }

                continue;
            }

            (string Test, string? Task, string Unit)[] tests =
            [
                (c.Test, c.Task, c.PerBodyMass ? "kg" : c.Unit),
                .. c.Alternatives.Select(a => (a.Test, a.Task, a.Unit)),
            ];
            foreach ((string test, string? task, string unit) in tests)
            {
                if (Measurable(test, task, unit) is { } why)
                {
                    yield return $"{e.Id}: entry criterion '{c.Id}' cannot be measured: {why}";
                }
            }
        }

        if (e.Entry.Select(c => c.Id).Distinct(StringComparer.Ordinal).Count() != e.Entry.Length)
        {
            yield return $"{e.Id}: an entry criterion's id stands twice.";
        }
    }

    private static string? Measurable(string test, string? task, string unit)
    {
        if (EntryTests.Find(test) is not { } known)
        {
            return $"no test gives '{test}'.";
        }

        if (known.Unit != unit)
        {
            return $"{test} is in {known.Unit}, not in {unit}.";
        }

        if (known.IsMeasure)
        {
            return JumpTasks.Parse(task) is null ? $"{test} needs the task it comes from, not '{task}'." : null;
        }

        return task is null ? null : $"{test} is a screen and has no task.";
    }

    private static IEnumerable<string> Edges(Exercise e, Catalogue catalogue)
    {
        foreach (string id in e.Regressions)
        {
            if (catalogue.Find(id) is not { } easier)
            {
                yield return $"{e.Id}: its regression '{id}' is not in the catalogue.";
                continue;
            }

            foreach (Tissue tissue in Enum.GetValues<Tissue>().Where(t => Tier(easier, t) > Tier(e, t)))
            {
                yield return $"{e.Id}: its regression '{id}' asks more of {Name(tissue)} ({Tier(easier, tissue)}) than it does itself ({Tier(e, tissue)}).";
            }
        }

        foreach (string id in e.Progressions)
        {
            if (catalogue.Find(id) is not { } harder)
            {
                yield return $"{e.Id}: its progression '{id}' is not in the catalogue.";
                continue;
            }

            foreach (Tissue tissue in Enum.GetValues<Tissue>().Where(t => Tier(harder, t) > Tier(e, t) + 1))
            {
                yield return $"{e.Id}: its progression '{id}' raises {Name(tissue)} from {Tier(e, tissue)} to {Tier(harder, tissue)}; one tier at most.";
            }
        }

        foreach (Tissue tissue in Enum.GetValues<Tissue>().Where(t => Tier(e, t) >= 2))
        {
            if (!catalogue.Below(e).Any(easier => Tier(easier, tissue) < Tier(e, tissue)))
            {
                yield return $"{e.Id}: no regression, near or far, asks less of {Name(tissue)}: a sore one has no instead.";
            }
        }

        if (e.PairsWith is { } pair && catalogue.Find(pair) is null)
        {
            yield return $"{e.Id}: it pairs with '{pair}', which is not in the catalogue.";
        }
    }

    /// <summary>A family is a name for several variants that train something in common; a single one is a slip of the pen.</summary>
    private static IEnumerable<string> Families(Catalogue catalogue)
    {
        foreach (var family in catalogue.Exercises.Where(e => e.Family is not null).GroupBy(e => e.Family!))
        {
            Exercise first = family.First();
            if (!Kebab.Is(family.Key))
            {
                yield return $"{first.Id}: the family '{family.Key}' is not kebab-case.";
            }

            if (family.Count() < 2)
            {
                yield return $"{first.Id}: the family '{family.Key}' has no other variant; name one, or leave it out.";
            }

            foreach (
                Exercise e in family.Where(e =>
                    !family.Any(other => other != e && e.Trains.Intersect(other.Trains).Any())
                )
            )
            {
                if (family.Count() > 1)
                {
                    yield return $"{e.Id}: it trains nothing that another of the family '{family.Key}' trains; it is no variant of them.";
                }
            }
        }
    }

    /// <summary>Progressions lead to every exercise from one that needs no test, and each of those has a way down.</summary>
    private static IEnumerable<string> Orphans(Catalogue catalogue)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal);
        var next = new Queue<string>(catalogue.Exercises.Where(e => e.Entry.IsEmpty).Select(e => e.Id));
        while (next.TryDequeue(out string? id))
        {
            if (reached.Add(id) && catalogue.Find(id) is { } e)
            {
                foreach (string harder in e.Progressions)
                {
                    next.Enqueue(harder);
                }
            }
        }

        foreach (Exercise e in catalogue.Exercises)
        {
            if (!reached.Contains(e.Id))
            {
                yield return $"{e.Id}: an orphan; no progression leads to it from an exercise that needs no test.";
            }

            if (!e.Entry.IsEmpty && e.Regressions.IsEmpty)
            {
                yield return $"{e.Id}: it has no regression to step back to.";
            }
        }
    }

    private static IEnumerable<string> Needs(Exercise e) => e.Entry.Select(c => c.OwnedExercise).OfType<string>();

    private static IEnumerable<string> Cycles(
        Catalogue catalogue,
        string what,
        Func<Exercise, IEnumerable<string>> edges
    )
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        var path = new List<string>();
        var found = new List<string>();
        foreach (Exercise e in catalogue.Exercises)
        {
            Walk(e.Id);
        }

        return found;

        void Walk(string id)
        {
            int at = path.IndexOf(id);
            if (at >= 0)
            {
                found.Add($"{id}: its {what} run in a circle: {string.Join(" → ", path.Skip(at).Append(id))}.");
                return;
            }

            if (done.Contains(id) || catalogue.Find(id) is not { } e)
            {
                return;
            }

            path.Add(id);
            foreach (string next in edges(e))
            {
                Walk(next);
            }

            path.RemoveAt(path.Count - 1);
            done.Add(id);
        }
    }

    private static int Tier(Exercise e, Tissue tissue) => e.Demand.GetValueOrDefault(tissue, 3);

    private static string Name(Tissue tissue) =>
        tissue switch
        {
            Tissue.Achilles => "the Achilles",
            Tissue.Patellar => "the patellar tendon",
            Tissue.Hip => "the hip",
            Tissue.Bone => "bone",
            _ => throw new ArgumentOutOfRangeException(nameof(tissue)),
        };
}
