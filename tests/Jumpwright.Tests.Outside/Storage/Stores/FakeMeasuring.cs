using System.Collections.Immutable;
using System.Text;
using Jumpwright.Athletes;
using Jumpwright.Quantities;
using Jumpwright.Recordings;
using Jumpwright.Storage.Stores;
using Jumpwright.Trials;

namespace Jumpwright.Tests.Outside.Storage.Stores;

/// <summary>A measurer that says something different of each content, so that a mix-up of rows shows. It measures no jump.</summary>
internal static class FakeMeasuring
{
    public static MeasuredRecording Measure(ReadOnlyMemory<byte> bytes, RecordingLabels? manifest)
    {
        RecordingLabels labels = manifest ?? RecordingLabels.None;
        string text = Encoding.UTF8.GetString(bytes.Span);
        if (text.Contains("bad", StringComparison.Ordinal))
        {
            return new MeasuredRecording(labels, null, new Refusal("line 2: the force is no number: export it again."));
        }

        double number = bytes.Span.ToArray().Sum(b => (double)b);
        ImmutableArray<Trial> trials = [One(1, number), One(2, number / 3)];
        return new MeasuredRecording(labels, Device.TwoForcePlates, trials);
    }

    private static Trial One(int number, double value) =>
        new(
            number,
            JumpTask.CountermovementJump,
            new TrialEvents(OnsetS: value / 1e6, TakeOffS: 1.5 / 3),
            [
                new Measure(MeasureNames.JumpHeight, value / 1e7, Unit.Metre, 0.1 / 3, "impulse-momentum"),
                new Measure(MeasureNames.PeakForce, value, Unit.Newton, 1 / 7.0, "greatest total force"),
            ],
            number == 2 ? [new HopContact(0.2, 0.5, value / 11), new HopContact(0.21, 0.51, value / 13)] : [],
            ["the landing was lower than the take-off", "a second sentence"],
            [MeasureNames.PeakForce]
        );
}
