using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Statistics;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Ankle stiffness: contact time of repeated hops. Single-leg heel raises may speak against it, never for it.</summary>
internal static class FindAnkleStiffness
{
    internal static readonly Sentence Test = $"ten hops on a plate or a mat, or filmed at 240 frames a second";

    internal static Finding In(Known known)
    {
        Evidence? contact = known.Find(MeasureNames.ContactTime, JumpTask.RepeatedHops);
        if (contact is not null && known.IsFresh(contact.Date))
        {
            double limits = Likelihood.Above(
                contact.Measure.In(Unit.Second),
                contact.Measure.StandardUncertainty,
                ProfileLimits.HopContact.Value
            );
            Sentence stiffness = (
                known.Find(MeasureNames.VerticalStiffness, JumpTask.RepeatedHops)
                ?? known.Find(MeasureNames.VerticalStiffnessTimeModel, JumpTask.RepeatedHops)
            )
                is { } k
                ? Sentence.Of(
                    $", vertical stiffness {Doubted.Number(k.Measure.Value / 1000, k.Measure.StandardUncertainty / 1000)} kN/m ({new SaidMethod(k.Measure.Method)})"
                )
                : Sentence.Of($"");
            return Verdicts.From(
                Quality.AnkleStiffness,
                limits,
                guardsHealth: false,
                $"Hops: contact {Spoken.Of(contact.Measure)}{stiffness} on {contact.Date} (at most {1000 * ProfileLimits.HopContact.Value:0} ms wished).",
                QualityTest.Hops,
                Test,
                ProfileLimits.HopContact,
                contact
            );
        }

        Finding untested = contact is null
            ? Verdicts.NotTested(Quality.AnkleStiffness, QualityTest.Hops, Test, ProfileLimits.HopContact)
            : Verdicts.Stale(Quality.AnkleStiffness, known, QualityTest.Hops, Test, ProfileLimits.HopContact, contact);
        return HeelRaises(known, untested) ?? untested;
    }

    /// <summary>Strength of the calf may speak against its spring, where it lacks; enough of it says nothing of the spring.</summary>
    private static Finding? HeelRaises(Known known, Finding untested)
    {
        double u = ProfileLimits.HeelRaises.StandardUncertainty!.Value;
        Evidence? left = known.Screen("heel-raises", Side.Left, "reps", u);
        Evidence? right = known.Screen("heel-raises", Side.Right, "reps", u);
        if (left is null || right is null || !known.IsFresh(left.Date) || !known.IsFresh(right.Date))
        {
            return null;
        }

        Evidence worse = left.Measure.Value <= right.Measure.Value ? left : right;
        double limits = Likelihood.Below(
            worse.Measure.Value,
            worse.Measure.StandardUncertainty,
            ProfileLimits.HeelRaises.Value - 0.5
        );
        Sentence said =
            $"Single-leg heel raises: left {left.Measure.Value:0}, right {right.Measure.Value:0} (± {u:0}) on {worse.Date} (at least {ProfileLimits.HeelRaises.Value:0} wished). That is strength of the calf; its spring is not tested without hops.";
        return Verdicts.OnlyAgainst(
            untested with
            {
                Sentence = untested.Evidence.IsEmpty ? said : Sentence.Of($"{untested.Sentence} {said}"),
                Evidence = [.. untested.Evidence, left, right],
                Thresholds = [ProfileLimits.HopContact.Source, ProfileLimits.HeelRaises.Source],
            },
            limits,
            ProfileLimits.HeelRaises
        );
    }
}
