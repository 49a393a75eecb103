namespace Jumpwright.Trials;

/// <summary>Every sentence with which measuring warns.</summary>
internal static class Cautions
{
    public const string NeverStill =
        "The athlete never stands still, so there is no weight and nothing by impulse: only times and the flight-time height.";

    public const string WeighedElsewhere =
        "The athlete was weighed before or after the approach only: the weight is known, but not the speed at the plant, so there is no height by impulse.";

    public const string LeavesPlate =
        "The athlete does not land on the plate again (or the recording ends first): no flight time and no landing.";

    public const string NoOnset =
        "No still stretch right before the jump: its onset is unknown, and so is the time to take-off.";

    public const string ZeroUnknown =
        "The plate is never empty, so its zero could not be checked: weight and impulse rest on the plate's own zero.";

    public const string PostureChanged =
        "The athlete stands still at another height after the landing than before the jump; the heights were not tied together.";

    public const string NoCountermovement = "There is no countermovement to speak of: was this a squat jump?";

    public const string ShortStill =
        "The athlete stands still for less than a second: weight and impulse are less sure than usual.";

    public static string LandedLower(double metres) =>
        $"The landing was about {metres * 100:0} cm lower than the take-off, so the flight-time height is too high; believe impulse–momentum.";

    public static string LandedHigher(double metres) =>
        $"By impulse the landing was about {metres * 100:0} cm higher than the take-off, which does not happen on a level plate; the heights disagree and neither is sure.";

    public static string HeightUnsure(double metres) =>
        $"A height by impulse is known only to ±{metres * 100:0.0} cm (two standard uncertainties): to make it surer, stand still for three seconds before and after.";

    public const string HopAtTheEdge =
        "Whether one of the best hops counts hangs on less than its contact time is sure (0.25 s is the limit), so the means could be of other hops.";

    public static string HopsAlike(double metres, double seconds) =>
        $"Which hops count isn't sure, or they aren't timed surely: their mean height is known to ±{metres * 100:0.0} cm, their mean contact to ±{seconds * 1000:0} ms (two standard uncertainties). The index is surer than either.";

    public static string HopsRinging(string hops) =>
        $"The plate rings where hops begin or end (by number: {hops}), so their times may be a hundredth of a second off: set the plate on firm ground, or record at a higher rate.";

    public const string OnsetUnsure =
        "Where the movement begins is unsure, so times counted from there are too: stand (or hold the squat) perfectly still for a second right before.";

    public const string StabilisationUnsure =
        "The force swings out to the very edge of 5 % of the weight, so the time to stabilisation could be one swing shorter or longer.";

    public static string ContactUnsure(double seconds) =>
        $"The contact time is known only to ±{seconds * 1000:0} ms (two standard uncertainties): look at the trace, or record at a higher rate.";

    /// <summary>Begins the sentences that name a timer's resolution, and no other.</summary>
    internal const string Coarse = "Timed coarsely";

    public static string CoarseHeight(double metres) =>
        $"{Coarse}: by the interval's own resolution the height is known only to ±{metres * 100:0.0} cm (two standard uncertainties); average several jumps, or film faster.";

    public static string CoarseContact(double seconds) =>
        $"{Coarse}: by the interval's own resolution the contact time is known only to ±{seconds * 1000:0} ms (two standard uncertainties); average several, or film faster.";

    public static string BouncesIgnored(int count) =>
        count == 1
            ? "A bounce after the landing was not taken for a jump."
            : $"{count} bounces after landings were not taken for jumps.";

    public static string WeightDisagrees(double measuredKg, double statedKg) =>
        $"The plate weighs {measuredKg:0.0} kg, but {statedKg:0.0} kg are stated: check the label or the plate; the plate's weight was used.";

    public static string WeightFarFromStated(double measuredKg, double statedKg) =>
        $"The plate weighs {measuredKg:0.0} kg, but {statedKg:0.0} kg are stated: one of them is wrong, so forces and powers are doubtful; check the label, the plate and the unit.";

    public static string WeightUnchecked(double measuredKg, double statedKg) =>
        $"The plate weighs {measuredKg:0.0} kg, but {statedKg:0.0} kg are stated, and there is no landing on the plate to check by: weight, height and power are doubtful; stand without leaning on anything, and check the label.";

    public static string WeightsDiffer(double earlierN, double laterN) =>
        $"One stand weighs {earlierN:0} N and a later one {laterN:0} N: somebody leaned on something, or the plate drifts too fast to be trusted; stand free and record again.";

    public static string LandedBeside(double partN, double weightN) =>
        $"After the landing {partN:0} N stand on the plate, before the jump {weightN:0} N: a foot landed beside it, so the landing is not measured and the flight may have ended earlier; land with both feet on it.";

    public static string ImpossibleStart(double weightN, double metresPerSecond) =>
        $"By the weight of {weightN:0} N that the only stand shows the athlete would come onto the plate at {metresPerSecond:0} m/s, which nobody does: that stand was not the whole weight; stand still with both feet on the plate before and after.";

    public static string ImpossibleRise(double weightN, double metres) =>
        $"By the weight of {weightN:0} N the athlete would leave the plate {Math.Abs(metres) * 100:0} cm {(metres > 0 ? "above" : "below")} standing height, which nobody does: something carried part of the weight in that stand, or the plate drifts; stand free and still, and record again.";

    public static string DriftBeyondPlates(double newtonsPerSecond) =>
        $"The stands fit together only if the plate's zero drifts by {newtonsPerSecond:0.0} N per second, which a plate in order does not: something carried part of the weight in one of them; stand free, let the plate warm up, and record again.";

    public static string LoadHeavierThanSeen(double weightN, double loadKg) =>
        $"The plate weighs {weightN:0} N with a load of {loadKg:0.0} kg stated, which leaves no athlete: check external_load_kg, and stand still with both feet on the plate.";

    public static string UnwantedDip(double percent) =>
        $"Before pushing the force dips {percent:0} % below weight: not a clean squat jump; it does not enter a comparison with the countermovement jump.";

    public static string DropNotBox(double measuredM, double nominalM) =>
        $"The fall was {measuredM * 100:0} cm, not the {nominalM * 100:0} cm of the box: the measured one counts.";

    public static string FewHops(int counted) =>
        $"Only {counted} hops count (first left out, contact below 0.25 s): the means rest on fewer than five.";

    public const string NoHopCounts =
        "No hop counts (first left out, contact below 0.25 s): only the single contacts are listed.";

    public static string LandingSaturated(double atS) =>
        $"At {atS:0.000} s, in the landing, the plate is at its limit: the landing's peak is unknown.";

    public const string NeverStillLanding =
        "The athlete never stands still after the landing, so there is no weight and no height of the fall: only the peak and its rate.";

    public const string FeetStayDown =
        "The feet never quite leave the plate, so the landing is counted from the least force.";

    public const string LoadNotStated =
        "No external_load_kg is stated, so the weight of the athlete alone is unknown: only the system's is given.";

    public static string Drift(double newtonsPerSecond) =>
        $"The plate's zero drifts by {newtonsPerSecond:0.0} N per second; it was corrected: let the plate warm up and zero it again.";

    public const string Ringing =
        "The plate rings so much that the instant at which the feet leave or meet it is unsure: what rests on it is doubtful.";

    public static string OneFootFirst(string foot, double seconds) =>
        $"The {foot} foot lands {seconds * 1000:0} ms before the other: the sides are not loaded alike, so their asymmetry is doubtful.";

    public static string PlatesOutOfStep(string side, double seconds) =>
        $"At take-off and at landing alike the {side} plate is {seconds * 1000:0} ms behind the other: their clocks differ, so what is made of their sum, and the asymmetries, are doubtful; record both through one amplifier, or align their clocks and export again.";

    public static string PlateTouched(double newtons) =>
        $"Before the drop the empty plate carries up to {newtons:0} N more or less than in flight: somebody touches or leans on it; keep it free and record again.";

    public static string PlateTouchedInFlight(double newtons) =>
        $"In flight the empty plate's reading changes by {newtons:0} N: somebody touches or leans on it; keep it free and record again.";

    public static string ZeroTakenOff(double newtons) =>
        $"The empty plate reads {newtons:0} N; that was taken off: zero the plate before recording.";

    public static string HumTakenOff(double newtons) =>
        $"Mains hum of {newtons:0.0} N lies in the force; it was taken off: keep plate and cable away from mains leads.";

    public static string Smoothed(double hz) =>
        $"The force was smoothed before it was written: nothing faster than about {hz:0} Hz is left, so edges and peaks are smeared. Export it without a filter.";

    public static string UnitUnsure(double newtons) =>
        $"The weight on the plate is only {newtons:0} N: if that is no small child, the force is not in newtons; check the unit.";

    public static string SetByHand(IEnumerable<string> events) =>
        $"Set by hand: {string.Join(", ", events)}. The measures follow from there.";
}
