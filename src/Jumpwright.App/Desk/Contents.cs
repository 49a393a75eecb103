using System.Collections.Immutable;
using Jumpwright.Athletes;

namespace Jumpwright.App.Desk;

/// <summary>Which recordings each athlete had at an import, and what the tables said, so that another import touches only whom it changes.</summary>
internal sealed class Contents(ImmutableDictionary<string, string> recordings)
{
    /// <summary>Whether an athlete has the same recordings as before, measured the same.</summary>
    public bool SameTrials(Contents before, string athlete) =>
        recordings.GetValueOrDefault(athlete, "") == before.Recordings.GetValueOrDefault(athlete, "");

    /// <summary>Whether the tables say the same of an athlete.</summary>
    public static bool SameTables(History now, History before) =>
        now.Athlete == before.Athlete
        && now.Screens.SequenceEqual(before.Screens)
        && now.Symptoms.SequenceEqual(before.Symptoms)
        && now.Restrictions.SequenceEqual(before.Restrictions)
        && now.Completed.SequenceEqual(before.Completed)
        && now.PossiblyDone.SequenceEqual(before.PossiblyDone)
        && now.Overrides.SequenceEqual(before.Overrides);

    private ImmutableDictionary<string, string> Recordings => recordings;
}
