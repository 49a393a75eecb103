namespace Jumpwright.Recordings;

/// <summary>Every sentence with which reading says what it repaired or ignored.</summary>
internal static class Repairs
{
    public const string ByteOrderMark = "A byte-order mark at the start of the file was skipped.";
    public const string CarriageReturns = "Lines end with a carriage return; they were read as ordinary lines.";
    public const string QuotesTakenOff = "Values stand in quotes; they were read without.";
    public const string CommentsSkipped = "Lines that begin with '#' among the samples were skipped.";
    public const string BlankLinesSkipped = "Blank lines among the samples were skipped.";

    public const string PlatesAreForC3d =
        "The column plates of trials.csv chooses among the plates of a C3D file; this is a CSV, so it was ignored.";

    public static string ColumnIgnored(string name) => $"The column '{Fields.Shown(name)}' was ignored.";

    public static string HeaderCase(string name, string taken) =>
        $"The column '{Fields.Shown(name)}' was read as {taken}.";

    public static string UnitConverted(string name, string unit) =>
        $"The column '{Fields.Shown(name)}' was converted to {unit}.";

    public static string InsertedSamples(int every, double rateHz) =>
        $"Only one sample in {every} was measured; those between repeat it or lie on straight lines, so they were left out and the rate is {rateHz:0.#} Hz: export at the device's own rate.";

    public static string LabelIgnored(int line, string key, string value, string expected) =>
        $"Line {line}: {key} '{Fields.Shown(value)}' is not {expected}; it was ignored.";

    public static string LabelRepeated(int line, string key) =>
        $"Line {line}: {key} stands more than once; the last value counts.";

    public static string FirstContactLong(double seconds) =>
        $"The first contact of {seconds:0.0} s was taken for standing before the first jump, not for a contact between flights.";
}
