using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Jumpwright.Safety;

namespace Jumpwright.App.Contracts;

/// <summary>The object of <c>jumpwright limits --json</c>.</summary>
internal sealed record LimitValuesJson([property: JsonPropertyName("limits")] ImmutableArray<LimitValueJson> Limits)
{
    public static string Write(LimitBook limits) =>
        ContractJson.Page(
            new LimitValuesJson([
                .. limits.All.Select(l => new LimitValueJson(
                    l.Id,
                    l.Value,
                    l.Unit,
                    ContractWords.Kebab(l.Kind.ToString()),
                    ContractWords.Kebab(l.Sense.ToString()),
                    l.Source.Id,
                    l.Says,
                    l.Least,
                    l.Most
                )),
            ])
        );
}
