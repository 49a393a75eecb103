using System.Globalization;
using System.Text;
using Jumpwright.Recordings;
using Jumpwright.Simulation.Devices;

namespace Jumpwright.Simulation.Writing;

/// <summary>Writes the contract's force recording (§1): fixed decimals, line feeds, no byte-order mark.</summary>
public static class ForceCsv
{
    public static byte[] Bytes(SimulatedRecording recording, RecordingLabels? labels = null)
    {
        PlateSettings settings = recording.Settings;
        ByteLines lines = new((recording.Samples * (settings.TwoPlates ? 30 : 20)) + 512);
        Metadata.Write(lines, labels);
        lines.Text(settings.TwoPlates ? "time_s,force_left_N,force_right_N\n" : "time_s,force_N\n");
        int timeDecimals = TimeDecimals(settings.RateHz);
        for (int i = 0; i < recording.Samples; i++)
        {
            lines.Number(i / settings.RateHz, timeDecimals);
            lines.Byte((byte)',');
            if (settings.TwoPlates)
            {
                lines.Number(recording.LeftN[i], settings.ForceDecimals);
                lines.Byte((byte)',');
                lines.Number(recording.RightN[i], settings.ForceDecimals);
            }
            else
            {
                lines.Number(recording.TotalN[i], settings.ForceDecimals);
            }

            lines.Byte((byte)'\n');
        }

        return lines.ToArray();
    }

    /// <summary>Decimals at which every stamp of that rate is exact, at most six.</summary>
    private static int TimeDecimals(double rateHz)
    {
        for (int decimals = 3; decimals < 6; decimals++)
        {
            double scaled = Math.Pow(10, decimals) / rateHz;
            if (Math.Abs(scaled - Math.Round(scaled)) < 1e-9)
            {
                return decimals;
            }
        }

        return 6;
    }
}
