using Jumpwright.Quantities;

namespace Jumpwright.Recordings.C3d;

/// <summary>Every sentence with which reading a C3D file says what it chose or corrected.</summary>
internal static class C3dRepairs
{
    public static Sentence ParametersEnd(int at) =>
        $"Byte {at}: the C3D file's parameters point out of their section here; they were taken to end.";

    public static Sentence PlatesChosen(int used, int[] taken) =>
        $"Of {used} force plates {(taken.Length == 1 ? Sentence.Of($"plate {taken[0]} alone carries load and was") : Sentence.Of($"plates {taken[0]} and {taken[1]} carry load and were"))} "
        + $"taken; to choose others write them in the column plates of trials.csv, such as 3, or 1+2 for the left and the right foot.";

    public static Sentence SidesAssumed(int left, int right) =>
        $"Plate {left} was taken for the left foot and plate {right} for the right; the file does not say. If it is so write {left}+{right} in the "
        + $"column plates of trials.csv, otherwise {right}+{left}.";

    public static Sentence BaselineTaken(int plate, int from, int to, double newtons) =>
        $"{newtons:0.0} N were taken off plate {plate}: the mean of frames {from} to {to}, in which it was empty (FORCE_PLATFORM:ZERO).";

    public static Sentence BaselineLoaded(int plate, int from, int to, double newtons) =>
        $"Frames {from} to {to} of plate {plate}, which should be empty (FORCE_PLATFORM:ZERO), carry {newtons:0} N; nothing was taken off.";

    public static Sentence BaselineOutside(int plate, double from, double to) =>
        $"FORCE_PLATFORM:ZERO names frames {from:0} to {to:0}, which the file does not hold; nothing was taken off plate {plate}.";
}
