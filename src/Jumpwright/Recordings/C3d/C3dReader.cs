using System.Globalization;
using Jumpwright.Quantities;

namespace Jumpwright.Recordings.C3d;

/// <summary>
/// A C3D file (the open format of c3d.org, its User Guide): the vertical force of its force plates out of the ANALOG data by the
/// FORCE_PLATFORM parameters. Points are passed over. Nothing is allocated by a count that the file's length does not bear out.
/// </summary>
internal static class C3dReader
{
    /// <summary>No landing of a person on one plate reaches 50 kN.</summary>
    private const double MostForceN = 50_000;

    /// <summary>A plate whose force moves by more than this carries somebody (house rule), N.</summary>
    private const double LoadedN = 100;

    /// <summary>Of more plates a person has to say which is meant: no gym has as many, and each costs memory.</summary>
    private const int MostToChooseFrom = 16;

    /// <summary>The baseline frames count as empty where their mean is this near the lowest level, N (house rule).</summary>
    private const double EmptyWithinN = 50;

    /// <summary>
    /// Whether the bytes are those of a C3D file: 'P' in the second byte, and no text, which never holds control bytes.
    /// </summary>
    public static bool Claims(ReadOnlySpan<byte> bytes) =>
        bytes.Length > 2
        && bytes[1] == 0x50
        && bytes[..Math.Min(bytes.Length, 512)].ContainsAnyInRange((byte)0, (byte)8);

    public static Outcome<Recording> Read(ReadOnlySpan<byte> bytes, RecordingLabels manifest)
    {
        int parametersAt = (bytes[0] - 1) * 512;
        if (bytes.Length < 512)
        {
            return C3dRefusals.HeaderCut(bytes.Length);
        }

        if (parametersAt < 512 || parametersAt + 4 > bytes.Length)
        {
            return C3dRefusals.ParametersOutside(parametersAt);
        }

        var order = (C3dByteOrder)bytes[parametersAt + 3];
        if (!Enum.IsDefined(order))
        {
            return C3dRefusals.ByteOrder(bytes[parametersAt + 3]);
        }

        var file = new C3dBytes(bytes, order);
        if (!C3dParameters.Read(file, parametersAt + 4).TryGet(out C3dParameters? parameters, out Refusal? refusal))
        {
            return refusal;
        }

        if (!C3dLayout.Of(file, parameters).TryGet(out C3dLayout? layout, out refusal))
        {
            return refusal;
        }

        return SamplingRate.IsUsable(layout.AnalogRateHz)
            ? Plates(file, parameters, layout, manifest)
            : C3dRefusals.Rate(layout.AnalogRateHz);
    }

    private static Outcome<Recording> Plates(
        C3dBytes file,
        C3dParameters parameters,
        C3dLayout layout,
        RecordingLabels manifest
    )
    {
        int used = (int)(parameters.Number(file, "FORCE_PLATFORM:USED") ?? 0);
        if (used < 1)
        {
            return C3dRefusals.NoPlate();
        }

        var warnings = new List<string>();
        if (parameters.LeadsOutAt is { } at)
        {
            warnings.Add(C3dRepairs.ParametersEnd(at));
        }

        if (manifest.FramesPerSecond is not null)
        {
            warnings.Add(Repairs.RateIsForFrames);
        }

        if (manifest.Plates is null && used > MostToChooseFrom)
        {
            return C3dRefusals.WhichPlates(used, []);
        }

        int[] wanted = manifest.Plates is { } choice
            ? (choice.Right is { } right ? [choice.First, right] : [choice.First])
            : [.. Enumerable.Range(1, used)];
        if (wanted.Any(n => n > used))
        {
            return C3dRefusals.NoSuchPlate(wanted.Max(), used);
        }

        bool choosing = wanted.Length > 2;
        var read = new List<(int Number, double[] ForceN)>();
        Refusal? first = null;
        foreach (int number in wanted)
        {
            if (
                !C3dPlate.Read(file, parameters, layout, number).TryGet(out C3dPlate? plate, out Refusal? refusal)
                || !Force(file, layout, plate).TryGet(out double[]? force, out refusal)
            )
            {
                if (!choosing)
                {
                    return refusal;
                }

                first ??= refusal;
                continue;
            }

            if (!choosing || Level(force, 0.995) - Level(force, 0.02) > LoadedN)
            {
                read.Add((number, force));
            }
        }

        if (choosing)
        {
            if (read.Count is < 1 or > 2)
            {
                return first is not null && read.Count == 0
                    ? first
                    : C3dRefusals.WhichPlates(used, [.. read.Select(p => p.Number)]);
            }

            warnings.Add(C3dRepairs.PlatesChosen(used, [.. read.Select(p => p.Number)]));
        }

        foreach ((int number, double[] force) in read)
        {
            if (Baseline(file, parameters, layout, number, force) is { } said)
            {
                warnings.Add(said);
            }
        }

        bool assumed = manifest.Plates is null && read.Count == 2;
        if (assumed)
        {
            warnings.Add(C3dRepairs.SidesAssumed(read[0].Number, read[1].Number));
        }

        double[] total = read[0].ForceN;
        if (read.Count == 2)
        {
            total = new double[layout.Samples];
            for (int i = 0; i < total.Length; i++)
            {
                total[i] = read[0].ForceN[i] + read[1].ForceN[i];
            }
        }

        return new ForceRecording(
            manifest,
            [.. warnings],
            (layout.FirstFrame - 1) / layout.FrameRateHz,
            layout.AnalogRateHz,
            total,
            read.Count == 2 ? read[0].ForceN : default,
            read.Count == 2 ? read[1].ForceN : default
        )
        {
            SidesAssumed = assumed,
        };
    }

    /// <summary>A plate's vertical force, upward positive, N, with the zero that the file has.</summary>
    internal static Outcome<double[]> Force(C3dBytes file, C3dLayout layout, C3dPlate plate)
    {
        var force = new double[layout.Samples];
        bool unsigned = layout.UnsignedSamples;
        for (int i = 0; i < force.Length; i++)
        {
            int at = layout.SampleAt(i);
            double sum = 0;
            foreach ((int channel, double offset, double newtons) in plate.Terms)
            {
                int where = at + (channel * layout.ValueBytes);
                double stored =
                    layout.FloatingPoint ? file.Float(where)
                    : unsigned ? file.Word(where)
                    : (short)file.Word(where);
                sum += (stored - offset) * newtons;
            }

            if (!(Math.Abs(sum) <= MostForceN))
            {
                return C3dRefusals.BeyondReason(
                    plate.Number,
                    sum,
                    ((layout.FirstFrame - 1) / layout.FrameRateHz) + (i / layout.AnalogRateHz)
                );
            }

            force[i] = sum;
        }

        return force;
    }

    /// <summary>
    /// FORCE_PLATFORM:ZERO names frames in which the plate was empty; their mean is taken off, as the format's guide says, but
    /// only where the plate really was empty then, which the guide asks for too: many programs write frames 1 to 10
    /// whatever stands on the plate. Measuring corrects the zero again from the empty plate it finds itself; that finds what is
    /// left, so nothing is taken off twice.
    /// </summary>
    private static string? Baseline(
        C3dBytes file,
        C3dParameters parameters,
        C3dLayout layout,
        int number,
        double[] forceN
    )
    {
        double[] zero = parameters.Numbers(file, "FORCE_PLATFORM:ZERO", signed: true) ?? [];
        if (zero.Length < 2 || (zero[0] == 0 && zero[1] == 0))
        {
            return null;
        }

        double from = Math.Max(zero[0], 1);
        double to = Math.Min(zero[1], layout.Frames);
        if (!(from <= to))
        {
            return C3dRepairs.BaselineOutside(number, zero[0], zero[1]);
        }

        double sum = 0;
        int first = ((int)from - 1) * layout.SamplesPerFrame;
        int last = (int)to * layout.SamplesPerFrame;
        for (int i = first; i < last; i++)
        {
            sum += forceN[i];
        }

        double mean = sum / (last - first);
        if (mean > Level(forceN, 0.02) + EmptyWithinN)
        {
            return C3dRepairs.BaselineLoaded(number, (int)from, (int)to, mean);
        }

        for (int i = 0; i < forceN.Length; i++)
        {
            forceN[i] -= mean;
        }

        return Math.Abs(mean) < 0.05 ? null : C3dRepairs.BaselineTaken(number, (int)from, (int)to, mean);
    }

    /// <summary>The level below which that part of the samples lies, from at most ten thousand of them.</summary>
    private static double Level(double[] forceN, double part)
    {
        int step = Math.Max(1, forceN.Length / 10_000);
        var some = new double[(forceN.Length + step - 1) / step];
        for (int i = 0; i < some.Length; i++)
        {
            some[i] = forceN[i * step];
        }

        Array.Sort(some);
        return some[(int)(part * (some.Length - 1))];
    }
}
