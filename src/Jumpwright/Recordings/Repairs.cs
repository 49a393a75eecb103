using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>Every sentence with which reading says what it repaired or ignored.</summary>
internal static class Repairs
{
    public static Sentence ByteOrderMark => $"A byte-order mark at the start of the file was skipped.";
    public static Sentence CarriageReturns => $"Lines end with a carriage return; they were read as ordinary lines.";
    public static Sentence QuotesTakenOff => $"Values stand in quotes; they were read without.";
    public static Sentence CommentsSkipped => $"Lines that begin with '#' among the samples were skipped.";
    public static Sentence BlankLinesSkipped => $"Blank lines among the samples were skipped.";

    public static Sentence PlatesAreForC3d =>
        $"The column plates of trials.csv chooses among the plates of a C3D file; this is a CSV, so it was ignored.";

    public static Sentence RateIsForFrames =>
        $"The column frames_per_second of trials.csv is for the counted frames of a camera; this recording has times of its own, so it was ignored.";

    public static Sentence ColumnIgnored(string name) => $"The column '{Fields.Shown(name)}' was ignored.";

    public static Sentence HeaderCase(string name, string taken) =>
        $"The column '{Fields.Shown(name)}' was read as {taken}.";

    public static Sentence UnitConverted(string name, Sentence unit) =>
        $"The column '{Fields.Shown(name)}' was converted to {unit}.";

    public static Sentence InsertedSamples(int every, double rateHz) =>
        $"Only one sample in {every} was measured; those between repeat it or lie on straight lines, so they were left out and the rate is {rateHz:0.#} Hz: export at the device's own rate.";

    public static Sentence LabelIgnored(int line, string key, string value, Sentence expected) =>
        $"Line {line}: {key} '{Fields.Shown(value)}' is not {expected}; it was ignored.";

    public static Sentence LabelRepeated(int line, string key) =>
        $"Line {line}: {key} stands more than once; the last value counts.";

    public static Sentence FirstContactLong(double seconds) =>
        $"The first contact of {seconds:0.0} s was taken for standing before the first jump, not for a contact between flights.";
}
