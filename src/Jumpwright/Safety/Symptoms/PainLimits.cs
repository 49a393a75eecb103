using Jumpwright.Quantities;

namespace Jumpwright.Safety.Symptoms;

/// <summary>The numbers of the pain rules, each with its source.</summary>
internal static class PainLimits
{
    /// <summary>Pain of a tendon up to here leaves work free.</summary>
    public static readonly Coefficient TendonFree = new(
        "tendon-pain-free-work",
        2,
        Unit.One,
        null,
        SafetySources.PainMonitoring,
        "Pages draw the free zone to 2 or to 3 of 10."
    );

    /// <summary>Pain of a tendon above here leaves nothing on it.</summary>
    public static readonly Coefficient TendonTop = new(
        "tendon-pain-top",
        5,
        Unit.One,
        null,
        SafetySources.PainMonitoring
    );

    /// <summary>Pain of a joint or muscle up to here leaves low work on it.</summary>
    public static readonly Coefficient JointLow = new(
        "joint-pain-low-work",
        2,
        Unit.One,
        null,
        SafetySources.CommonPractice
    );

    /// <summary>Contacts a session under caution: half of the least a beginner is usually given (80 to 100).</summary>
    public static readonly Coefficient CautionContacts = new(
        "contacts-under-caution",
        40,
        new Unit("contacts"),
        null,
        SafetySources.House
    );
}
