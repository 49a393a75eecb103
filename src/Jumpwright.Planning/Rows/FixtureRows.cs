using Jumpwright.Athletes;
using Jumpwright.Plans;

namespace Jumpwright.Planning.Rows;

/// <summary>Days and hours round fixtures close entries.</summary>
internal static class FixtureRows
{
    public static void Add(SquadModel squad)
    {
        foreach (Fixture fixture in squad.Request.Fixtures)
        {
            FixtureWindow window = FixtureWindow.Of(fixture, squad.Request);
            foreach (Choice choice in squad.Choices)
            {
                string subject = $"{choice.Who.Athlete.Id}:{fixture.Date:uuuu-MM-dd}";
                if (
                    choice.HighIntensity
                    && FixtureWindow.IsQuietDay(fixture, choice.Slot.Date, squad.Request.Limits)
                    && squad.Asked.ForLimit(
                        "high-intensity-round-fixtures",
                        subject,
                        $"No high-intensity work for {choice.Who.Athlete.Name} on the day of {fixture.Name} ({fixture.Date:uuuu-MM-dd}) or just before it."
                    )
                )
                {
                    squad.Close(choice);
                }

                if (
                    OrderOfWork.IsTopTier(choice.Exercise)
                    && window.HoursWithin(choice.Slot) > 0
                    && squad.Asked.ForLimit(
                        "top-tier-round-fixtures",
                        subject,
                        $"Nothing of the top tier for {choice.Who.Athlete.Name} within {squad.Request.Limits.TopTierHoursRoundFixture} h of {fixture.Name} ({fixture.Date:uuuu-MM-dd})."
                    )
                )
                {
                    squad.Close(choice);
                }

                if (
                    FixtureWindow.RecoveryMissing(choice.Exercise, choice.Slot, fixture, squad.Request) > 0
                    && squad.Asked.ForLimit(
                        "recovery-before-fixture",
                        subject,
                        $"What {choice.Who.Athlete.Name} does is recovered from when {fixture.Name} ({fixture.Date:uuuu-MM-dd}) begins."
                    )
                )
                {
                    squad.Close(choice);
                }

                if (
                    FixtureWindow.SoreLanding(choice.Exercise, choice.Slot, fixture, choice.Who) is not null
                    && squad.Asked.ForLimit(
                        "sore-landings-before-fixture",
                        subject,
                        $"No landing on the floor loads what is sore of {choice.Who.Athlete.Name} on the day of {fixture.Name} ({fixture.Date:uuuu-MM-dd}) or just before it."
                    )
                )
                {
                    squad.Close(choice);
                }
            }
        }
    }
}
