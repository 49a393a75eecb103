using System.Buffers;
using Jumpwright.Recordings;

namespace Jumpwright.Trials;

/// <summary>A force recording prepared for measuring: its zero corrected, its contacts and stays found.</summary>
internal sealed class Plate : IDisposable
{
    /// <summary>Off the plate for longer is not a flight: a rise of 1.2 m takes this long.</summary>
    public const double LongestFlightS = 0.99;

    /// <summary>A push shows above the weight by this much, within this long before take-off (house rule).</summary>
    private const double PushPart = 1.12;

    private const double PushS = 0.35;

    /// <summary>The trough of an unweighting is no longer, s; a flight so short is of 2 cm (house rule).</summary>
    private const double LongestTroughS = 0.12;

    /// <summary>A trough carries more than this, part of the load and N: a zero that wanders and the plate's ringing stay below (house rule).</summary>
    private const double TroughPart = 0.02;

    private const double TroughN = 10;

    /// <summary>Empty plates are no quieter, N, unless what they read is cut off; loaded ones then still show noise, N.</summary>
    private const double CutNoiseN = 0.05;

    private const double LoadedNoiseN = 0.15;

    /// <summary>Exports cut off less than this part of the load.</summary>
    private const double MostCutPart = 0.1;

    private readonly double[] _forceN;
    private EmptyPlate? _leftEmpty;
    private EmptyPlate? _rightEmpty;

    private Plate(
        ForceRecording recording,
        PlateLevels levels,
        EmptyPlate empty,
        double[] forceN,
        double humN,
        List<Contact> contacts
    )
    {
        Recording = recording;
        Levels = levels;
        Empty = empty;
        _forceN = forceN;
        HumN = humN;
        Contacts = contacts;
        Stays = FindStays();
    }

    public ForceRecording Recording { get; }

    public double RateHz => Recording.RateHz;

    public PlateLevels Levels { get; }

    public EmptyPlate Empty { get; }

    /// <summary>Amplitude of the mains hum that was taken off, N; 0 where none was found.</summary>
    public double HumN { get; }

    /// <summary>Total force with the zero corrected and mains hum taken off, N.</summary>
    public ReadOnlySpan<double> ForceN => _forceN.AsSpan(0, Recording.TotalN.Length);

    public List<Contact> Contacts { get; }

    /// <summary>Contacts, first to last, between which there were only flights.</summary>
    public List<(int First, int Last)> Stays { get; }

    public static Plate Of(ForceRecording recording)
    {
        ReadOnlySpan<double> raw = recording.TotalN.Span;
        double[] force = ArrayPool<double>.Shared.Rent(raw.Length);
        PlateLevels levels = PlateLevels.Of(raw, recording.RateHz);
        double humN = MainsHum.TakeOut(raw, recording.RateHz, levels.NoiseN, force);
        if (humN > 0)
        {
            raw = force.AsSpan(0, raw.Length);
            levels = PlateLevels.Of(raw, recording.RateHz);
        }

        List<Contact> contacts = FlightDetection.Contacts(raw, recording.RateHz, levels);
        // The trough of a fast unweighting is no empty plate.
        JoinTroughs(raw, recording.RateHz, levels.ZeroN, levels.LoadN, contacts);
        EmptyPlate empty = EmptyPlate.Of(raw, recording.RateHz, contacts, levels).OfSum(recording.HasTwoPlates ? 2 : 1);
        if (levels.WasEmpty && empty.Samples > 0)
        {
            // Again with the zero and the noise of the empty plate itself.
            levels = levels with
            {
                ZeroN = empty.ZeroN,
            };
            double loaded = PlateLevels.LoadedNoise(raw, contacts);
            // A plate that reads exactly nothing below a limit has no edges to fit: only the part above the limit is there.
            bool cut = empty.NoiseN < CutNoiseN && loaded > LoadedNoiseN;
            if (cut)
            {
                levels = levels with { CutN = CutOf(raw, levels) };
            }

            contacts = FlightDetection.Contacts(
                raw,
                recording.RateHz,
                levels,
                cut ? null : Math.Max(empty.NoiseN, loaded)
            );
            JoinTroughs(raw, recording.RateHz, levels.ZeroN, levels.LoadN, contacts);
        }

        Samples.Less(raw, empty.ZeroN, force.AsSpan(0, raw.Length));
        return new Plate(recording, levels, empty, force, humN, contacts);
    }

    /// <summary>The least that is not nothing, N above zero: below it an export wrote nothing.</summary>
    private static double CutOf(ReadOnlySpan<double> raw, PlateLevels levels)
    {
        double least = MostCutPart * levels.LoadN;
        foreach (double f in raw)
        {
            double above = f - levels.ZeroN;
            least = above > CutNoiseN && above < least ? above : least;
        }

        return least;
    }

    /// <summary>
    /// Nobody takes off without pushing: a gap that follows no force above the weight is the trough of a fast unweighting, or a
    /// step, and the contacts round it are one. So they are round a short gap in whose middle the plate still carries something.
    /// </summary>
    private static void JoinTroughs(
        ReadOnlySpan<double> forceN,
        double rateHz,
        double zeroN,
        double loadN,
        List<Contact> contacts
    )
    {
        for (int k = contacts.Count - 1; k > 0; k--)
        {
            Contact before = contacts[k - 1];
            Contact after = contacts[k];
            if ((Start(after) - End(before)) / rateHz > LongestFlightS)
            {
                continue;
            }

            int from = Math.Max(before.Samples.From, before.Samples.To - (int)(PushS * rateHz));
            double most = Math.Max(Samples.Greatest(forceN[from..before.Samples.To]), 0);
            bool neverEmpty = IsTrough(forceN, rateHz, before.Samples.To, after.Samples.From, zeroN, loadN);
            if (most - zeroN < PushPart * loadN || neverEmpty)
            {
                contacts[k - 1] = new Contact(
                    new Stretch(before.Samples.From, after.Samples.To),
                    before.TouchDown,
                    after.TakeOff
                );
                contacts.RemoveAt(k);
            }
        }
    }

    /// <summary>Whether a gap is short, and the plate not empty in its middle third.</summary>
    private static bool IsTrough(
        ReadOnlySpan<double> forceN,
        double rateHz,
        int from,
        int to,
        double zeroN,
        double loadN
    )
    {
        int third = (to - from) / 3;
        return third > 0
            && to - from < LongestTroughS * rateHz
            && (ForceSums.Total(forceN.Slice(from + third, third)) / third) - zeroN
                > Math.Max(TroughPart * loadN, TroughN);
    }

    /// <summary>What the left plate shows while nobody is on it.</summary>
    public EmptyPlate LeftEmpty => _leftEmpty ??= EmptyOf(Recording.LeftN);

    /// <summary>What the right plate shows while nobody is on it.</summary>
    public EmptyPlate RightEmpty => _rightEmpty ??= EmptyOf(Recording.RightN);

    /// <summary>The force is the next plate's after this.</summary>
    public void Dispose() => ArrayPool<double>.Shared.Return(_forceN);

    public double TimeS(double sample) => Recording.TimeS(sample);

    /// <summary>The sample, fractional, at a time on the recording's own clock.</summary>
    public double SampleAt(double timeS) => (timeS - Recording.StartS) * RateHz;

    /// <summary>Seconds between two samples.</summary>
    public double Seconds(double from, double to) => (to - from) / RateHz;

    /// <summary>Every still stretch of the contacts of a stay, but for those that weigh only a part of the athlete.</summary>
    public List<QuietStanding> Still(int first, int last)
    {
        var found = new List<QuietStanding>();
        for (int k = first; k <= last; k++)
        {
            Contact contact = Contacts[k];
            int settle = contact.TouchDown is null ? 0 : (int)(0.1 * RateHz);
            int leave = contact.TakeOff is null ? 0 : (int)(0.1 * RateHz);
            var within = new Stretch(contact.Samples.From + settle, contact.Samples.To - leave);
            if (within.Length > 0)
            {
                QuietStanding.Find(ForceN, RateHz, within, Levels.LoadN, Levels.NoiseN, found);
            }
        }

        LandedBeside.TakeOut(found);
        return found;
    }

    /// <summary>The motion through the contacts of a stay.</summary>
    public FittedMotion FitMotion(int first, int last, List<QuietStanding> still, bool samePosture) =>
        FittedMotion.Fit(
            ForceN,
            RateHz,
            new Stretch(
                Math.Max((int)Start(Contacts[first]) - 1, 0),
                Math.Min((int)Math.Ceiling(End(Contacts[last])) + 2, ForceN.Length)
            ),
            Contacts.GetRange(first, last - first + 1),
            still,
            Levels.NoiseN,
            Empty,
            samePosture
        );

    private EmptyPlate EmptyOf(ReadOnlyMemory<double> sideN) => EmptyPlate.Of(sideN.Span, RateHz, Contacts, default);

    private List<(int First, int Last)> FindStays()
    {
        var stays = new List<(int, int)>();
        int first = 0;
        for (int k = 0; k < Contacts.Count; k++)
        {
            bool last = k + 1 == Contacts.Count;
            if (last || Seconds(End(Contacts[k]), Start(Contacts[k + 1])) > LongestFlightS)
            {
                stays.Add((first, k));
                first = k + 1;
            }
        }

        return stays;
    }

    private static double End(Contact contact) => contact.TakeOff?.Sample ?? contact.Samples.To;

    private static double Start(Contact contact) => contact.TouchDown?.Sample ?? contact.Samples.From;
}
