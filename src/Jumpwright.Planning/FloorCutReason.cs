namespace Jumpwright.Planning;

/// <summary>Why an item is not begun.</summary>
public enum FloorCutReason
{
    /// <summary>One of its turns would not be over in the minutes at hand.</summary>
    NotOverInTime,

    /// <summary>It must be done fresh, and the session at hand would be too far on by then.</summary>
    NotFreshByThen,

    /// <summary>There is too little of its kit today, however long one waits.</summary>
    KitMissing,

    /// <summary>Landing or low ankle work has to go before it, and none is left.</summary>
    NoLowWorkBefore,

    /// <summary>A lift that is done only beside its jump, and the jump is left out.</summary>
    OnlyWithItsPartner,
}
