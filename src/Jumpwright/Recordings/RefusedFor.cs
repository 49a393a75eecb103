namespace Jumpwright.Recordings;

/// <summary>Why a recording was refused, as a kind: whoever decides by the reason reads this, never the words of its sentence.</summary>
public enum RefusedFor
{
    /// <summary>It is listed and not there, or can't be opened or stored.</summary>
    NotThere,

    /// <summary>It is no recording: empty, no text, no header or another one, no force in it.</summary>
    NotARecording,

    /// <summary>A recording whose table or header contradicts itself, or has a cell that can't be read.</summary>
    TableUnreadable,

    /// <summary>The file ends in the middle.</summary>
    CutOff,

    /// <summary>Samples are missing, or were filled in.</summary>
    SamplesMissing,

    /// <summary>Time runs back, stands still or is uneven.</summary>
    TimeUneven,

    /// <summary>Too few or too many samples a second, or none said.</summary>
    RateWrong,

    /// <summary>Values that no person makes in that unit.</summary>
    UnitWrong,

    /// <summary>Too short to hold what was asked.</summary>
    TooShort,

    /// <summary>Longer than any recording of a jump.</summary>
    TooLong,

    /// <summary>A label that can't be read, other than the task.</summary>
    LabelUnreadable,

    /// <summary>It names a task that is none of those known.</summary>
    TaskNotKnown,

    /// <summary>Nothing says what was asked.</summary>
    TaskNotSaid,

    /// <summary>Such a recording can't show that task.</summary>
    TaskNotMeasurable,

    /// <summary>Frames that somebody counted, and the camera's rate is not written.</summary>
    FrameRateNotSaid,

    /// <summary>Frames that somebody counted, and the camera's rate or their numbers can't be right.</summary>
    FrameRateDoubted,

    /// <summary>Several plates, and it is not said which were stood on.</summary>
    PlatesNotSaid,

    /// <summary>The plate was at its limit, not zeroed, reversed, or its cable jumped.</summary>
    PlateFault,

    /// <summary>Nobody stands still, and there is no complete flight.</summary>
    NeverStill,

    /// <summary>What was asked is not in it: no jump, no flight, no landing, nobody on the plate.</summary>
    NoJump,

    /// <summary>An event that somebody set by hand can't stand; the recording itself is not refused.</summary>
    ByHand,

    /// <summary>A fault in this program.</summary>
    OwnFault,
}
