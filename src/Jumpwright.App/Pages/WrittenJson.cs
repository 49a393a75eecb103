using System.Text.Json;

namespace Jumpwright.App.Pages;

/// <summary>An object written as JSON, made only when it is not kept already.</summary>
/// <param name="make">Makes it.</param>
internal sealed class WrittenJson(Func<object> make) : WrittenPage(WrittenPage.Json)
{
    public override Task<byte[]> Write(IServiceProvider services) =>
        Task.FromResult(JsonSerializer.SerializeToUtf8Bytes(make(), JsonSerializerOptions.Web));
}
