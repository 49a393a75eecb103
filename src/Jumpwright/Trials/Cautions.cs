using Jumpwright.Quantities;

namespace Jumpwright.Trials;

/// <summary>Every sentence with which measuring warns.</summary>
internal static class Cautions
{
    public static Sentence NeverStill =>
        $"The athlete never stands still, so there is no weight and nothing by impulse: only times and the flight-time height.";

    public static Sentence WeighedElsewhere =>
        $"The athlete was weighed before or after the approach only: the weight is known, but not the speed at the plant, so there is no height by impulse.";

    public static Sentence LeavesPlate =>
        $"The athlete does not land on the plate again (or the recording ends first): no flight time and no landing.";

    public static Sentence LandingCutOff(double seconds) =>
        $"The recording ends {seconds * 1000:0} ms after the landing began, so the highest force and the steepest rise may have come later: record on until the athlete stands.";

    public static Sentence NoOnset =>
        $"No still stretch right before the jump: its onset is unknown, and so is the time to take-off.";

    public static Sentence ZeroUnknown =>
        $"The plate is never empty, so its zero could not be checked: weight and impulse rest on the plate's own zero.";

    public static Sentence PostureChanged =>
        $"The athlete stands still at another height after the landing than before the jump; the heights were not tied together.";

    public static Sentence NoCountermovement => $"There is no countermovement to speak of: was this a squat jump?";

    public static Sentence ShortStill =>
        $"The athlete stands still for less than a second: weight and impulse are less sure than usual.";

    public static Sentence LandedLower(double metres) =>
        $"The landing was about {new Length(metres):0 cm} lower than the take-off, so the flight-time height is too high; believe impulse–momentum.";

    public static Sentence LandedLowerOrNot(double metres) =>
        $"By the impulse the landing was about {new Length(metres):0 cm} lower than the take-off, and the flight-time height too high; but the impulse is not sure here, so look at the landing.";

    public static Sentence LandedHigher(double metres) =>
        $"By impulse the landing was about {new Length(metres):0 cm} higher than the take-off, which does not happen on a level plate; the heights disagree and neither is sure.";

    public static Sentence HeightUnsure(double metres) =>
        $"A height by impulse is known only to ±{new Length(metres):0.0 cm} (two standard uncertainties): to make it surer, stand still for three seconds before and after.";

    public static Sentence HopAtTheEdge =>
        $"Whether one of the best hops counts hangs on less than its contact time is sure (0.25 s is the limit), so the means could be of other hops.";

    public static Sentence HopsAlike(double metres, double seconds) =>
        $"Which hops count isn't sure, or they aren't timed surely: their mean height is known to ±{new Length(metres):0.0 cm}, their mean contact to ±{seconds * 1000:0} ms (two standard uncertainties). The index is surer than either.";

    public static Sentence HopsRinging(string hops) =>
        $"The plate rings where hops begin or end (by number: {hops}), so their times may be a hundredth of a second off: set the plate on firm ground, or record at a higher rate.";

    public static Sentence OnsetUnsure =>
        $"Where the movement begins is unsure, so times counted from there are too: stand (or hold the squat) perfectly still for a second right before.";

    public static Sentence StabilisationUnsure =>
        $"The force swings out to the very edge of 5 % of the weight, so the time to stabilisation could be one swing shorter or longer.";

    public static Sentence ContactUnsure(double seconds) =>
        $"The contact time is known only to ±{seconds * 1000:0} ms (two standard uncertainties): look at the trace, or record at a higher rate.";

    /// <summary>Begins the sentences that name a timer's resolution, and no other.</summary>
    internal const string Coarse = "Timed coarsely";

    public static Sentence CoarseHeight(double metres) =>
        $"Timed coarsely: by the interval's own resolution the height is known only to ±{new Length(metres):0.0 cm} (two standard uncertainties); average several jumps, or film faster.";

    public static Sentence CoarseContact(double seconds) =>
        $"Timed coarsely: by the interval's own resolution the contact time is known only to ±{seconds * 1000:0} ms (two standard uncertainties); average several, or film faster.";

    public static Sentence BouncesIgnored(int count) =>
        count == 1
            ? Sentence.Of($"A bounce after the landing was not taken for a jump.")
            : Sentence.Of($"{count} bounces after landings were not taken for jumps.");

    public static Sentence HopsIgnored(int count) =>
        count == 1
            ? Sentence.Of($"A hop on the plate before the jump was not taken for one onto the box.")
            : Sentence.Of($"{count} hops on the plate before the jump were not taken for jumps onto the box.");

    public static Sentence WeightDisagrees(double measuredKg, double statedKg) =>
        $"The plate weighs {new Mass(measuredKg):0.0 kg}, but {new Mass(statedKg):0.0 kg} are stated: check the label or the plate; the plate's weight was used.";

    public static Sentence WeightFarFromStated(double measuredKg, double statedKg) =>
        $"The plate weighs {new Mass(measuredKg):0.0 kg}, but {new Mass(statedKg):0.0 kg} are stated: one of them is wrong, so forces and powers are doubtful; check the label, the plate and the unit.";

    public static Sentence WeightUnchecked(double measuredKg, double statedKg) =>
        $"The plate weighs {new Mass(measuredKg):0.0 kg}, but {new Mass(statedKg):0.0 kg} are stated, and there is no landing on the plate to check by: weight, height and power are doubtful; stand without leaning on anything, and check the label.";

    public static Sentence WeightsDiffer(double earlierN, double laterN) =>
        $"One stand weighs {earlierN:0} N and a later one {laterN:0} N: somebody leaned on something, or the plate drifts too fast to be trusted; stand free and record again.";

    public static Sentence LandedBeside(double partN, double weightN) =>
        $"After the landing {partN:0} N stand on the plate, before the jump {weightN:0} N: a foot landed beside it, so the landing is not measured and the flight may have ended earlier; land with both feet on it.";

    public static Sentence ImpossibleStart(double weightN, double metresPerSecond) =>
        $"By the weight of {weightN:0} N that the only stand shows the athlete would come onto the plate at {metresPerSecond:0} m/s, which nobody does: that stand was not the whole weight; stand still with both feet on the plate before and after.";

    public static Sentence ImpossibleRise(double weightN, double metres) =>
        metres > 0
            ? Sentence.Of(
                $"By the weight of {weightN:0} N the athlete would leave the plate {new Length(Math.Abs(metres)):0 cm} above standing height, which nobody does: something carried part of the weight in that stand, or the plate drifts; stand free and still, and record again."
            )
            : Sentence.Of(
                $"By the weight of {weightN:0} N the athlete would leave the plate {new Length(Math.Abs(metres)):0 cm} below standing height, which nobody does: something carried part of the weight in that stand, or the plate drifts; stand free and still, and record again."
            );

    public static Sentence DriftBeyondPlates(double newtonsPerSecond) =>
        $"The stands fit together only if the plate's zero drifts by {newtonsPerSecond:0.0} N per second, which a plate in order does not: something carried part of the weight in one of them; stand free, let the plate warm up, and record again.";

    public static Sentence LoadHeavierThanSeen(double weightN, double loadKg) =>
        $"The plate weighs {weightN:0} N with a load of {new Mass(loadKg):0.0 kg} stated, which leaves no athlete: check external_load_kg, and stand still with both feet on the plate.";

    public static Sentence UnwantedDip(double percent) =>
        $"Before pushing the force dips {percent:0} % below weight: not a clean squat jump; it does not enter a comparison with the countermovement jump.";

    public static Sentence DropNotBox(double measuredM, double nominalM) =>
        $"The fall was {new Length(measuredM):0 cm}, not the {new Length(nominalM):0 cm} of the box: the measured one counts.";

    public static Sentence FewHops(int counted) =>
        $"Only {counted} hops count (first left out, contact below 0.25 s): the means rest on fewer than five.";

    public static Sentence NoHopCounts =>
        $"No hop counts (first left out, contact below 0.25 s): only the single contacts are listed.";

    public static Sentence LandingSaturated(double atS) =>
        $"At {atS:0.000} s, in the landing, the plate is at its limit: the landing's peak is unknown.";

    public static Sentence NeverStillLanding =>
        $"The athlete never stands still after the landing, so there is no weight and no height of the fall: only the peak and its rate.";

    public static Sentence FeetStayDown =>
        $"The feet never quite leave the plate, so the landing is counted from the least force.";

    public static Sentence LoadNotStated =>
        $"No external_load_kg is stated, so the weight of the athlete alone is unknown: only the system's is given.";

    public static Sentence Drift(double newtonsPerSecond) =>
        $"The plate's zero drifts by {newtonsPerSecond:0.0} N per second; it was corrected: let the plate warm up and zero it again.";

    public static Sentence Ringing =>
        $"The plate rings so much that the instant at which the feet leave or meet it is unsure: what rests on it is doubtful.";

    public static Sentence OneFootFirst(bool left, double seconds) =>
        left
            ? Sentence.Of(
                $"The left foot lands {seconds * 1000:0} ms before the other: the sides are not loaded alike, so their asymmetry is doubtful."
            )
            : Sentence.Of(
                $"The right foot lands {seconds * 1000:0} ms before the other: the sides are not loaded alike, so their asymmetry is doubtful."
            );

    public static Sentence PlatesOutOfStep(bool right, double seconds) =>
        right
            ? Sentence.Of(
                $"At take-off and at landing alike the right plate is {seconds * 1000:0} ms behind the other: their clocks differ, so what is made of their sum, and the asymmetries, are doubtful; record both through one amplifier, or align their clocks and export again."
            )
            : Sentence.Of(
                $"At take-off and at landing alike the left plate is {seconds * 1000:0} ms behind the other: their clocks differ, so what is made of their sum, and the asymmetries, are doubtful; record both through one amplifier, or align their clocks and export again."
            );

    public static Sentence PlateTouched(double newtons) =>
        $"Before the drop the empty plate carries up to {newtons:0} N more or less than in flight: somebody touches or leans on it; keep it free and record again.";

    public static Sentence PlateTouchedInFlight(double newtons) =>
        $"In flight the empty plate's reading changes by {newtons:0} N: somebody touches or leans on it; keep it free and record again.";

    public static Sentence ZeroTakenOff(double newtons) =>
        $"The empty plate reads {newtons:0} N; that was taken off: zero the plate before recording.";

    public static Sentence HumTakenOff(double newtons) =>
        $"Mains hum of {newtons:0.0} N lies in the force; it was taken off: keep plate and cable away from mains leads.";

    public static Sentence Smoothed(double hz) =>
        $"The force was smoothed before it was written: nothing faster than about {hz:0} Hz is left, so edges and peaks are smeared. Export it without a filter.";

    public static Sentence SwingsBack(double newtons) =>
        $"After take-off the reading swings {newtons:0} N below its zero: something between plate and file is slower than the jump, so edges and peaks are smeared. Take the amplifier's or the export's filter off.";

    public static Sentence UnitUnsure(double newtons) =>
        $"The weight on the plate is only {newtons:0} N: if that is no small child, the force is not in newtons; check the unit.";

    public static Sentence SetByHand(IEnumerable<Sentence> events) =>
        $"Set by hand: {Sentence.Join(", ", events)}. The measures follow from there.";
}
