namespace Jumpwright.App.Pages;

/// <summary>A page that can be written out without answering with it, so that it can be kept.</summary>
internal interface IWrittenPage : IResult
{
    /// <summary>The status it is answered with.</summary>
    int Status { get; }

    /// <summary>The document, UTF-8.</summary>
    Task<byte[]> Write(IServiceProvider services);

    /// <summary>Answers with the document.</summary>
    Task Answer(HttpContext context, byte[] page);
}
