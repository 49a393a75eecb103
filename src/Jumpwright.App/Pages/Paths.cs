namespace Jumpwright.App.Pages;

/// <summary>Addresses of the pages, made in one place.</summary>
internal static class Paths
{
    public static string Athlete(string id) => "/athletes/" + Uri.EscapeDataString(id);

    /// <summary>Where a stop sign, a clinician's word and a new body mass are written down; on this machine only.</summary>
    public static string Health(string id) => "/health/" + Uri.EscapeDataString(id);

    /// <summary>Where tests done with a tape, a watch or an eye are typed; on this machine only.</summary>
    public static string Tests(string id) => "/tests/" + Uri.EscapeDataString(id);

    /// <summary>Why each step of the ladder stands as it does.</summary>
    public static string Ladder(string id) => Athlete(id) + "/ladder";

    /// <summary>Every measure in use, and where it comes from.</summary>
    public static string Measures(string id) => Athlete(id) + "/measures";

    /// <summary>What the sentence of the squad's roll rests on.</summary>
    public static string Said(string id) => Athlete(id) + "/said";

    /// <summary>Every trial.</summary>
    public static string Recordings(string id) => Athlete(id) + "/recordings";

    public static string Trial(string sha256, int number) => $"/trials/{sha256}/{number}";

    public static string Card(string sessionId, string athleteId) =>
        $"/cards/{Uri.EscapeDataString(sessionId)}/{Uri.EscapeDataString(athleteId)}";

    public static string CardPdf(string sessionId, string athleteId) => Card(sessionId, athleteId) + ".pdf";

    public static string Why(string sessionId, string athleteId) => Card(sessionId, athleteId) + "/why";

    public static string Session(string sessionId) => "/week/sessions/" + Uri.EscapeDataString(sessionId);

    public static string SheetPdf(string sessionId) => $"/sheets/{Uri.EscapeDataString(sessionId)}.pdf";

    public static string Exercise(string id) => "/exercises#" + Uri.EscapeDataString(id);
}
