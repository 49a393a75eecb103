using Jumpwright.Simulation.Tasks;

namespace Jumpwright.Simulation.Devices;

/// <summary>How much of the force the left plate carries at each instant.</summary>
public sealed class Shares
{
    private const double BlendS = 0.03;
    private readonly SimulatedMotion _motion;
    private readonly PlateSettings _settings;
    private readonly double _push;
    private readonly double _changeFromS;
    private readonly double _changeToS;

    public Shares(SimulatedMotion motion, PlateSettings settings)
    {
        _motion = motion;
        _settings = settings;
        _push = 0.5 * (1 + (settings.AsymmetryPct / 100));
        // From the standing share to the pushing share while unweighting, so that it is level throughout propulsion.
        if (motion.OnsetS is { } onset && motion.Contacts.Length > 0)
        {
            double bottom = motion.PropulsionFromS ?? motion.Motion.Lowest(onset, motion.Contacts[0].ToS).TimeS;
            (_changeFromS, _changeToS) = motion.PropulsionFromS is null
                ? (onset, onset + (0.8 * (bottom - onset)))
                : (onset - 0.5, onset);
        }
    }

    /// <summary>Left part of the total, 0 to 1.</summary>
    public double LeftAt(double timeS)
    {
        if (_motion.LandingS is { } landing && timeS >= landing)
        {
            double settled = landing + 0.8;
            double share = Blend(_settings.LandingLeftShare, _settings.StandingLeftShare, (timeS - settled) / 0.4);
            return Lead(share, timeS - landing);
        }

        foreach (ContactSpan contact in _motion.Contacts)
        {
            if (timeS >= contact.FromS && timeS <= contact.ToS)
            {
                return contact.FromS == _motion.OnsetS ? Standing(timeS) : Lead(_push, timeS - contact.FromS);
            }
        }

        return Standing(timeS);
    }

    private double Standing(double timeS) =>
        _changeToS > _changeFromS
            ? Blend(_settings.StandingLeftShare, _push, (timeS - _changeFromS) / (_changeToS - _changeFromS))
            : _settings.StandingLeftShare;

    private double Lead(double share, double sinceS)
    {
        if (_settings.LeadS <= 0)
        {
            return share;
        }

        return Blend(_settings.LeftLeads ? 1 : 0, share, (sinceS - _settings.LeadS) / BlendS);
    }

    private static double Blend(double from, double to, double along)
    {
        double s = Math.Clamp(along, 0, 1);
        return from + ((to - from) * s * s * (3 - (2 * s)));
    }
}
