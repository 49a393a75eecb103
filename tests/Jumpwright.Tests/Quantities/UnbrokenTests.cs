using Jumpwright.Quantities;

namespace Jumpwright.Tests.Quantities;

/// <summary>Where no line may end; written here with an underscore.</summary>
public class UnbrokenTests
{
    [Theory]
    // Value, doubt and unit.
    [InlineData("jump height 37.1 ± 0.3 cm, best", "jump height 37.1_±_0.3_cm, best")]
    [InlineData("(12 N s)", "(12_N_s)")]
    [InlineData("at most 30 cm.", "at most 30_cm.")]
    [InlineData("11,8 Zoll hoch", "11,8_Zoll hoch")]
    [InlineData("3 % less, 90 ° or 2 min 30 s", "3_% less, 90_° or 2_min_30_s")]
    [InlineData("known to ± 0.3 m/s", "known to ±_0.3_m/s")]
    [InlineData("p ≤ 0.05", "p ≤_0.05")]
    // Sets and reps.
    [InlineData("3 × 5 each leg, 30 cm", "3_×_5 each leg, 30_cm")]
    [InlineData("40 contacts × tier", "40_contacts ×_tier")]
    // Days.
    [InlineData("on 4 Jan 2027, early", "on 4_Jan_2027, early")]
    [InlineData("Monday 4 January 2027.", "Monday 4_January_2027.")]
    [InlineData("Mon 4 Jan, 17:00", "Mon_4_Jan, 17:00")]
    [InlineData("Montag, 4. Januar 2027", "Montag, 4._Januar_2027")]
    [InlineData("Mo 4. Jan", "Mo_4._Jan")]
    // Counts and ranges.
    [InlineData("12 of 20 athletes", "12_of_20_athletes")]
    [InlineData("von 3 bis 5 Sätzen, 2 von 7", "von 3_bis_5_Sätzen, 2_von_7")]
    [InlineData("20 to 30 cm", "20_to_30_cm")]
    // A count and what is counted, a thing and its number.
    [InlineData("within 21 days, 2 landings go wrong", "within 21_days, 2_landings go wrong")]
    [InlineData("(box 30 cm), tier 2", "(box_30_cm), tier_2")]
    [InlineData("4 steps of run-up", "4_steps of run-up")]
    [InlineData("in 14 Tagen, 3 Sätze", "in 14_Tagen, 3_Sätze")]
    [InlineData("20 clean sessions, a box is 30 high", "20 clean sessions, a box is 30 high")]
    // A point between two things.
    [InlineData("card · why this?", "card_· why this?")]
    [InlineData(" · why this?", "_· why this?")]
    [InlineData("\n   · why this?", "\n   · why this?")]
    // What belongs to no number breaks as ever.
    [InlineData("a jump of each leg in turn", "a jump of each leg in turn")]
    [InlineData("one of 5 athletes", "one of 5_athletes")]
    [InlineData("up to 3 boxes", "up to 3_boxes")]
    [InlineData("box 1 and box 2 may be used", "box_1 and box_2 may be used")]
    [InlineData("no numbers, no care ± at all", "no numbers, no care ± at all")]
    [InlineData("", "")]
    public void ALineDoesNotEnd_WithinANumber(string text, string held)
    {
        Assert.Equal(held, Unbroken.In(text).Replace(Unbroken.Space, '_'));
        Assert.Equal(text, Unbroken.In(text).Replace(Unbroken.Space, ' '));
    }

    [Fact]
    public void WhatIsHeldAlready_IsHeldTheSame()
    {
        string once = Unbroken.In("from 3 to 5 sets, 37.1 ± 0.3 cm on 4 Jan 2027");
        Assert.Equal(once, Unbroken.In(once));
    }
}
