using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>Ties the kind of a refusal to its sentence, and reads it from there.</summary>
public static class RefusedKinds
{
    /// <summary>A refusal of that kind, in those words.</summary>
    public static Refusal Refuse(this RefusedFor kind, Sentence said)
    {
        ArgumentNullException.ThrowIfNull(said);
        return Refusal.Of(said.As(new RefusalReason(kind)));
    }

    /// <summary>The kind of a refusal; null where it is none of a recording, or came back as words alone.</summary>
    public static RefusedFor? Kind(this Refusal refusal)
    {
        ArgumentNullException.ThrowIfNull(refusal);
        return (refusal.Said.Reason as RefusalReason)?.For;
    }

    /// <summary>Whether what is missing is the task: a label mends it, and nobody can guess which.</summary>
    public static bool IsOfTask(this RefusedFor kind) => kind is RefusedFor.TaskNotKnown or RefusedFor.TaskNotSaid;

    /// <summary>Whether the recording is of frames that somebody counted.</summary>
    public static bool IsOfFrames(this RefusedFor kind) =>
        kind is RefusedFor.FrameRateNotSaid or RefusedFor.FrameRateDoubted;
}
