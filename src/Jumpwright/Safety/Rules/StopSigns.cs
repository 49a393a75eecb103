using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Safety.Restrictions;
using Jumpwright.Safety.Symptoms;

namespace Jumpwright.Safety.Rules;

/// <summary>
/// Stop signs. An athlete's own later "0" does not lift one; only a dated row of restrictions that says <c>stop-sign-lifted</c>, set
/// on the day of the sign or later by a named person in a licensed role, for that place or the whole body. What is known to have been
/// written after that word is not lifted by it: whoever lifted one sign had not heard of the next.
/// </summary>
internal sealed class StopSigns : SafetyRule
{
    public override string Id => "stop-sign";

    public override string Says =>
        "After swelling, giving way, locking, numbness, pain at rest or at night, a felt pop, a head knock, chest pain or a faint "
        + "there are no jumps and no loaded work until a clinician has lifted it in writing.";

    public override Source Source => SafetySources.CommonPractice;

    public override IEnumerable<Ruling> Rule(SafetyCase @case)
    {
        StopSign[] standing =
        [
            .. @case
                .Symptoms.Select(StopSign.In)
                .OfType<StopSign>()
                .Where(sign => !@case.Rows.Any(row => Lifts(row, sign, @case))),
        ];
        foreach (IGrouping<(Sentence, BodySite), StopSign> alike in standing.GroupBy(sign => (sign.What, sign.Site)))
        {
            StopSign sign = alike.MaxBy(s => s.Report.Date)!;
            Sentence what = sign.Site.Name.Length > 0 ? Sentence.Of($"{sign.What} ({sign.Site.Said})") : sign.What;
            Sentence unlicensed = @case.Rows.LastOrDefault(row =>
                row.LiftsStopSign && row.Row.From >= sign.Report.Date && !row.Licensed
            )
                is { } row
                ? Sentence.Of(
                    $" The entry of {row.Row.From} by {row.Whom} does not lift it: that takes a licensed role."
                )
                : Sentence.Of($"");
            yield return Close(
                new NothingPlanned($"a clinician"),
                $"Stop sign on {sign.Report.Date}: {what}. See a clinician first; only their word in the restrictions that the stop sign is lifted, with name and day, on or after that day changes it.{unlicensed}"
            );
        }
    }

    private static bool Lifts(RestrictionReading row, StopSign sign, SafetyCase @case) =>
        row.Understood
        && row.LiftsStopSign
        && row.Licensed
        && row.Row.From >= sign.Report.Date
        && row.Row.From <= @case.Day
        && !(row.Row.WrittenAt < sign.Report.WrittenAt)
        && row.Site.Covers(sign.Site);
}
