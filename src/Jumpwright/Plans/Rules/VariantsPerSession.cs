using Jumpwright.Exercises;
using Jumpwright.Quantities;

namespace Jumpwright.Plans.Rules;

/// <summary>One variant of an exercise in a session.</summary>
public sealed class VariantsPerSession : Limit
{
    public override string Id => "variants-per-session";
    public override string Sentence => "A session holds one variant of an exercise, not the same work under two names.";
    public override string SourceId => "common-practice";

    public override IEnumerable<Breach> Check(Plan plan, PlanRequest request) =>
        from session in Reading.Sessions(plan, request)
        from family in Counted(session.Who, session.Slot, session.Items, request)
        let limit = Variants.AtMost(session.Who, session.Slot.Id, family.Key, request)
        where family.Names.Count > limit
        select new Breach(
            Id,
            session.Who.Athlete.Id,
            session.Slot.Id,
            family.Names.Count - limit,
            "exercises",
            $"{session.Who.Athlete.Name} would do {All(family.Names)} in {session.Slot.Said}: variants of one exercise; at most {limit}."
        );

    private static Sentence All(List<SaidExercise> names) =>
        names
            .Select(n => Quantities.Sentence.Of($"{n}"))
            .Aggregate((some, one) => Quantities.Sentence.Of($"{some} and {one}"));

    private static IEnumerable<((string Family, bool Low) Key, List<SaidExercise> Names)> Counted(
        AthleteRequest who,
        SessionSlot slot,
        IEnumerable<PlannedItem> items,
        PlanRequest request
    ) =>
        from item in items
        let menu = who.OnMenu(slot.Id, item.Dose.ExerciseId)
        where menu is not null && !Variants.CountsWithPartner(menu, who, request)
        let key = Variants.KeyOf(menu, request)
        where key is not null
        group request.Catalogue.Find(menu.ExerciseId)!.Said by key.Value into family
        select (family.Key, family.ToList());
}
