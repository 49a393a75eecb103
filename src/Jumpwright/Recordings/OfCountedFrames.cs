using Jumpwright.Quantities;

namespace Jumpwright.Recordings;

/// <summary>Why a recording of frames that somebody counted was refused: the camera's rate is lacking, or can't be right.</summary>
public sealed record OfCountedFrames : IReason;
