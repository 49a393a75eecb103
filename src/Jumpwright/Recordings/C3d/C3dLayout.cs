using Jumpwright.Quantities;

namespace Jumpwright.Recordings.C3d;

/// <summary>Where the analog samples of a C3D file lie, checked against the file's length and against themselves.</summary>
/// <param name="DataAt">Position of the first frame.</param>
/// <param name="Frames">Frames of 3D points; all of them lie within the file.</param>
/// <param name="FirstFrame">Number of the first frame on the capture's own count, from 1.</param>
/// <param name="Points">3D points in a frame, each of four values, before the analog samples.</param>
/// <param name="Channels">Analog channels.</param>
/// <param name="SamplesPerFrame">Analog samples of each channel in a frame.</param>
/// <param name="FloatingPoint">Values are floating point; otherwise words of 16 bits.</param>
/// <param name="UnsignedSamples">Words of 16 bits have no sign (ANALOG:FORMAT).</param>
/// <param name="FrameRateHz">Frames a second.</param>
/// <param name="AnalogRateHz">Analog samples a second.</param>
internal sealed record C3dLayout(
    int DataAt,
    int Frames,
    int FirstFrame,
    int Points,
    int Channels,
    int SamplesPerFrame,
    bool FloatingPoint,
    bool UnsignedSamples,
    double FrameRateHz,
    double AnalogRateHz
)
{
    private const int MostSamples = 2_000_000;
    private const int FewestSamples = 20;

    /// <summary>How far the two rates may differ: they are written in single precision, and rounded by some.</summary>
    private const double RateAgreement = 0.001;

    public int Samples => Frames * SamplesPerFrame;

    public int ValueBytes => FloatingPoint ? 4 : 2;

    public int FrameBytes => ((Points * 4) + (Channels * SamplesPerFrame)) * ValueBytes;

    /// <summary>Position of the first channel's sample.</summary>
    public int SampleAt(int sample) =>
        DataAt
        + (sample / SamplesPerFrame * FrameBytes)
        + (((Points * 4) + (sample % SamplesPerFrame * Channels)) * ValueBytes);

    public static Outcome<C3dLayout> Of(C3dBytes file, C3dParameters parameters)
    {
        int points = file.Word(2);
        if (parameters.Number(file, "POINT:USED") is { } used && used != points)
        {
            return C3dRefusals.Contradiction($"points", points, "POINT:USED", used);
        }

        int channels = (int)(parameters.Number(file, "ANALOG:USED") ?? 0);
        int perFrame = file.Word(4);
        int samplesPerFrame = file.Word(18);
        if (channels < 1 || perFrame == 0)
        {
            return C3dRefusals.NoAnalog();
        }

        if ((long)samplesPerFrame * channels != perFrame)
        {
            return C3dRefusals.AnalogContradiction(perFrame, (double)samplesPerFrame * channels);
        }

        double scale = file.Float(12);
        double? pointScale = parameters.Number(file, "POINT:SCALE");
        if (pointScale is { } other && (other < 0) != (scale < 0))
        {
            return C3dRefusals.Contradiction($"scale", scale, "POINT:SCALE", other);
        }

        bool floating = scale < 0;
        double frameRate = parameters.Number(file, "POINT:RATE") ?? file.Float(20);
        double analogRate = parameters.Number(file, "ANALOG:RATE") ?? frameRate * samplesPerFrame;
        if (!(frameRate > 0) || !(analogRate > 0) || !double.IsFinite(frameRate) || !double.IsFinite(analogRate))
        {
            return C3dRefusals.NoRate(frameRate, analogRate);
        }

        if (Math.Abs(analogRate - (frameRate * samplesPerFrame)) > RateAgreement * analogRate)
        {
            return C3dRefusals.Contradiction(
                $"analog samples a second by its frames",
                frameRate * samplesPerFrame,
                "ANALOG:RATE",
                analogRate
            );
        }

        int first = Math.Max((int)file.Word(6), 1);
        double frames = FrameCount(file, parameters);
        long dataAt = ((long)file.Word(16) - 1) * 512;
        if (dataAt < 512 || dataAt > file.Length)
        {
            return C3dRefusals.DataOutside(file.Word(16));
        }

        long frameBytes = ((points * 4L) + perFrame) * (floating ? 4 : 2);
        long there = (file.Length - dataAt) / frameBytes;
        if (!(frames >= 1) || there == 0)
        {
            return C3dRefusals.NoData();
        }

        if (frames > there)
        {
            return C3dRefusals.CutOff(there + 1, frames, there / frameRate);
        }

        long samples = (long)frames * samplesPerFrame;
        if (samples > MostSamples)
        {
            return C3dRefusals.TooManySamples(samples, MostSamples);
        }

        return samples < FewestSamples
            ? Refusals.TooFewSamples((int)samples)
            : new C3dLayout(
                (int)dataAt,
                (int)frames,
                first,
                points,
                channels,
                samplesPerFrame,
                floating,
                parameters.IsUnsigned(file),
                frameRate,
                analogRate
            );
    }

    /// <summary>
    /// Frames: POINT:FRAMES, which is a word without sign or floating point. At 65535 it may stand for more, which then are in
    /// POINT:LONG_FRAMES or between TRIAL:ACTUAL_START_FIELD and TRIAL:ACTUAL_END_FIELD. Without it the header's range counts.
    /// </summary>
    private static double FrameCount(C3dBytes file, C3dParameters parameters)
    {
        double? frames = parameters.Number(file, "POINT:FRAMES");
        if (frames is null)
        {
            return file.Word(8) - file.Word(6) + 1;
        }

        if (frames < 65535)
        {
            return Math.Floor(frames.Value);
        }

        if (parameters.Number(file, "POINT:LONG_FRAMES") is { } many)
        {
            return Math.Floor(many);
        }

        return
            parameters.Numbers(file, "TRIAL:ACTUAL_START_FIELD") is { Length: >= 2 } start
            && parameters.Numbers(file, "TRIAL:ACTUAL_END_FIELD") is { Length: >= 2 } end
            ? end[0] + (65536 * end[1]) - start[0] - (65536 * start[1]) + 1
            : Math.Floor(frames.Value);
    }
}
