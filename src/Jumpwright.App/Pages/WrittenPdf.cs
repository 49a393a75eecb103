namespace Jumpwright.App.Pages;

/// <summary>A PDF, drawn only when it is not kept already.</summary>
/// <param name="draw">Draws it.</param>
internal sealed class WrittenPdf(Func<byte[]> draw) : WrittenPage(WrittenPage.Pdf)
{
    public override Task<byte[]> Write(IServiceProvider services) => Task.FromResult(draw());
}
