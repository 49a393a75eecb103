namespace Jumpwright.Athletes;

/// <summary>What a session is jumped on.</summary>
public enum Surface
{
    /// <summary>Written down, but nobody here knows the word: counts as hard.</summary>
    Unknown,

    /// <summary>A floor on springs or battens, as in sports halls.</summary>
    SprungFloor,

    /// <summary>A rubber floor or firm mats.</summary>
    Rubber,

    /// <summary>A synthetic running track.</summary>
    Track,

    Grass,

    ArtificialTurf,

    /// <summary>Sand: soft, which lengthens contact.</summary>
    Sand,

    /// <summary>Concrete, asphalt, tiles or wood laid on them.</summary>
    Hard,
}
