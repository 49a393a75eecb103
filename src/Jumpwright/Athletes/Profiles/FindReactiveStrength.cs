using System.Collections.Immutable;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Statistics;
using Jumpwright.Trials;

namespace Jumpwright.Athletes.Profiles;

/// <summary>Reactive strength: contact and index of drop jumps, never one without the other.</summary>
internal static class FindReactiveStrength
{
    private static readonly Sentence Test =
        $"three drop jumps from a box known from training, 30 cm at most, on a plate or a mat, or filmed at 240 frames a second";

    /// <summary>The same where it is said how many.</summary>
    private static readonly Sentence Trials =
        $"drop jumps from a box known from training, 30 cm at most, on a plate or a mat, or filmed at 240 frames a second";

    private static readonly ImmutableArray<Source> Thresholds =
    [
        ProfileLimits.DropContact.Source,
        ProfileLimits.ReactiveStrength.Source,
    ];

    internal static Finding In(Known known) => Judged(known) with { Thresholds = Thresholds };

    private static Finding Judged(Known known)
    {
        Evidence? contact = known.Find(MeasureNames.ContactTime, JumpTask.DropJump);
        Evidence? index = contact is null
            ? null
            : known
                .All(MeasureNames.ReactiveStrengthIndex, JumpTask.DropJump)
                .FirstOrDefault(e => e.Device == contact.Device && e.Date == contact.Date);
        if (contact is null || index is null)
        {
            return Verdicts.NotTested(Quality.ReactiveStrength, QualityTest.DropJumps, Test, ProfileLimits.DropContact);
        }

        if (!known.IsFresh(contact.Date))
        {
            return Verdicts.Stale(
                Quality.ReactiveStrength,
                known,
                QualityTest.DropJumps,
                Test,
                ProfileLimits.DropContact,
                contact
            );
        }

        double slow = Likelihood.Above(
            contact.Measure.Value,
            contact.Measure.StandardUncertainty,
            ProfileLimits.DropContact.Value
        );
        double low = Likelihood.Below(
            index.Measure.Value,
            index.Measure.StandardUncertainty,
            ProfileLimits.ReactiveStrength.Value
        );
        Sentence dropped =
            known.Find(MeasureNames.DropHeight, JumpTask.DropJump) is { } drop && drop.Date == contact.Date
                ? Sentence.Of($", real drop {Spoken.Of(drop.Measure)}")
                : Sentence.Of($"");
        ImmutableArray<Evidence> evidence = [contact, index];

        // The surer of the two speaks; they share the contact time, so they are not multiplied.
        return Verdicts.From(
            Quality.ReactiveStrength,
            Math.Max(slow, low),
            guardsHealth: false,
            $"Drop jump: contact {Spoken.Of(contact.Measure)}, reactive strength index {Spoken.Of(index.Measure)} ({new SaidMethod(index.Measure.Method)}{dropped}) on {contact.Date} (contact at most {1000 * ProfileLimits.DropContact.Value:0} ms and index at least {ProfileLimits.ReactiveStrength.Value:0.0} m/s wished).",
            QualityTest.DropJumps,
            Trials,
            slow >= low ? ProfileLimits.DropContact : ProfileLimits.ReactiveStrength,
            evidence
        );
    }
}
