namespace Jumpwright.App.Desk.Journals;

/// <summary>What was said last of keeping a minor's data.</summary>
internal enum ConsentState
{
    /// <summary>Nothing.</summary>
    NotRecorded,

    /// <summary>Somebody consents.</summary>
    Given,

    /// <summary>Somebody does not consent, and nobody did before.</summary>
    Declined,

    /// <summary>What was given was taken back.</summary>
    TakenBack,
}
