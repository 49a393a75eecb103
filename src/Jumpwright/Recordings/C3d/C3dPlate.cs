using Jumpwright.Quantities;

namespace Jumpwright.Recordings.C3d;

/// <summary>
/// What makes a plate's vertical force, upward positive, of its analog channels: a sum of (sample − offset) · factor.
/// </summary>
/// <param name="Number">The file's number of the plate, from 1.</param>
/// <param name="Terms">Channel, its offset in stored units, and newtons upward of one stored unit.</param>
internal sealed record C3dPlate(int Number, (int Channel, double Offset, double Newtons)[] Terms)
{
    /// <summary>A plate that leans by more than about three degrees has no single vertical channel (house rule).</summary>
    private const double LeastUpright = 0.9986;

    /// <summary>Reads one plate's parameters.</summary>
    /// <param name="file">The whole file.</param>
    /// <param name="parameters">Its parameters.</param>
    /// <param name="layout">Its layout.</param>
    /// <param name="number">The plate, from 1.</param>
    public static Outcome<C3dPlate> Read(C3dBytes file, C3dParameters parameters, C3dLayout layout, int number)
    {
        double[] types = parameters.Numbers(file, "FORCE_PLATFORM:TYPE") ?? [];
        if (types.Length < number)
        {
            return C3dRefusals.Missing("FORCE_PLATFORM:TYPE", number);
        }

        // Fx Fy Fz and a point or moments; eight sensors, the last four vertical; six channels through a matrix.
        int[] vertical = types[number - 1] switch
        {
            1 or 2 => [2],
            3 => [4, 5, 6, 7],
            4 => [0, 1, 2, 3, 4, 5],
            _ => [],
        };
        if (vertical.Length == 0)
        {
            return C3dRefusals.PlateType(number, types[number - 1]);
        }

        if (Direction(file, parameters, number) is not { } direction)
        {
            return C3dRefusals.Corners(number);
        }

        bool matrix = types[number - 1] == 4;
        double[]? row = matrix ? MatrixRow(file, parameters, number) : [1, 1, 1, 1];
        if (row is null)
        {
            return C3dRefusals.Missing("FORCE_PLATFORM:CAL_MATRIX", number);
        }

        double[]? channels = Column(file, parameters, "FORCE_PLATFORM:CHANNEL", number);
        double[] scales = parameters.ChannelNumbers(file, "ANALOG:SCALE", signed: true);
        double[] offsets = parameters.ChannelNumbers(file, "ANALOG:OFFSET", signed: !layout.UnsignedSamples);
        string[] units = parameters.ChannelTexts(file, "ANALOG:UNITS");
        if (parameters.Number(file, "ANALOG:GEN_SCALE") is not { } general)
        {
            return C3dRefusals.Missing("ANALOG:GEN_SCALE", number);
        }

        var terms = new (int, double, double)[vertical.Length];
        for (int i = 0; i < vertical.Length; i++)
        {
            int channel = channels is not null && vertical[i] < channels.Length ? (int)channels[vertical[i]] : 0;
            if (channel < 1 || channel > layout.Channels)
            {
                return C3dRefusals.Channel(number, channel, layout.Channels);
            }

            if (channel > scales.Length || channel > offsets.Length)
            {
                return C3dRefusals.Missing(channel > scales.Length ? "ANALOG:SCALE" : "ANALOG:OFFSET", number);
            }

            string unit = channel <= units.Length ? units[channel - 1] : "";
            if ((matrix ? C3dUnits.ThroughMatrix(unit) : C3dUnits.Newtons(unit)) is not { } newtons)
            {
                return C3dRefusals.Unit(number, channel, Fields.Shown(unit));
            }

            double factor = scales[channel - 1] * general * newtons * row[i] * direction;
            if (!double.IsFinite(factor) || !double.IsFinite(offsets[channel - 1]))
            {
                return C3dRefusals.Scale(number, channel);
            }

            terms[i] = (channel - 1, offsets[channel - 1], factor);
        }

        return new C3dPlate(number, terms);
    }

    /// <summary>
    /// +1 where the plate's own z axis points up, −1 where it points down, null where its corners do not tell. The corners
    /// are, in the plate's own axes, at (+x +y), (−x +y), (−x −y) and (+x −y), and its axes are right-handed, so z = x × y.
    /// Which way of the room is up, POINT:Y_SCREEN says (the axis that points up on a screen); without it the positive way of
    /// the axis that the plate lies across.
    /// </summary>
    private static double? Direction(C3dBytes file, C3dParameters parameters, int number)
    {
        double[]? corners = parameters.Numbers(file, "FORCE_PLATFORM:CORNERS");
        int at = (number - 1) * 12;
        if (corners is null || corners.Length < at + 12)
        {
            return null;
        }

        Span<double> x = stackalloc double[3];
        Span<double> y = stackalloc double[3];
        for (int i = 0; i < 3; i++)
        {
            double c1 = corners[at + i];
            double c2 = corners[at + 3 + i];
            double c3 = corners[at + 6 + i];
            double c4 = corners[at + 9 + i];
            x[i] = c1 + c4 - c2 - c3;
            y[i] = c1 + c2 - c3 - c4;
        }

        Span<double> z = [(x[1] * y[2]) - (x[2] * y[1]), (x[2] * y[0]) - (x[0] * y[2]), (x[0] * y[1]) - (x[1] * y[0])];
        double length = Math.Sqrt((z[0] * z[0]) + (z[1] * z[1]) + (z[2] * z[2]));
        int axis =
            Math.Abs(z[0]) > Math.Abs(z[1])
                ? (Math.Abs(z[0]) > Math.Abs(z[2]) ? 0 : 2)
                : (Math.Abs(z[1]) > Math.Abs(z[2]) ? 1 : 2);
        if (!(length > 0) || !(Math.Abs(z[axis]) >= LeastUpright * length))
        {
            return null;
        }

        string screen = parameters.Texts(file, "POINT:Y_SCREEN").FirstOrDefault() ?? "";
        bool down = screen.Length == 2 && screen[0] == '-' && char.ToUpperInvariant(screen[1]) - 'X' == axis;
        return z[axis] > 0 != down ? 1 : -1;
    }

    /// <summary>The third row of the plate's 6 × 6 matrix, which is kept by columns: what each channel adds to the vertical force.</summary>
    private static double[]? MatrixRow(C3dBytes file, C3dParameters parameters, int number)
    {
        double[]? all = parameters.Numbers(file, "FORCE_PLATFORM:CAL_MATRIX");
        int at = (number - 1) * 36;
        return
            parameters.Find("FORCE_PLATFORM:CAL_MATRIX") is { Dimensions: [6, 6, ..] }
            && all is not null
            && all.Length >= at + 36
            ? [.. Enumerable.Range(0, 6).Select(column => all[at + 2 + (6 * column)])]
            : null;
    }

    private static double[]? Column(C3dBytes file, C3dParameters parameters, string name, int number)
    {
        if (
            parameters.Find(name) is not { Dimensions.Length: > 0 } found
            || parameters.Numbers(file, name) is not { } all
        )
        {
            return null;
        }

        int rows = found.Dimensions[0];
        return all.Length >= number * rows ? all[((number - 1) * rows)..(number * rows)] : null;
    }
}
