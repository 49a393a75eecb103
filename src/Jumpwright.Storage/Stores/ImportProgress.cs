namespace Jumpwright.Storage.Stores;

/// <summary>How far an import is.</summary>
/// <param name="Done">Recordings stored or refused so far.</param>
/// <param name="Total">Recordings in the folder.</param>
/// <param name="File">The last one.</param>
public readonly record struct ImportProgress(int Done, int Total, string File);
