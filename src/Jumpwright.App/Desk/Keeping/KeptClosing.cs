namespace Jumpwright.App.Desk.Keeping;

/// <summary>A session of an athlete that something written after the plan closed.</summary>
internal sealed record KeptClosing(string SessionId, string AthleteId);
