namespace Jumpwright.Storage.Stores.Rows;

/// <summary>What a remark of a trial is.</summary>
internal enum RemarkKind
{
    Warning,
    Doubtful,
}
