using System.Net.Mime;
using System.Text;
using System.Text.Json.Serialization;
using Jumpwright.App.Contracts;
using Jumpwright.App.Desk;
using Jumpwright.App.Pages;
using Jumpwright.App.Pages.Routes;
using Jumpwright.App.Wording;
using Jumpwright.Exercises;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Microsoft.AspNetCore.OpenApi;

namespace Jumpwright.App.Api;

/// <summary>The same shapes as the commands print, for programs on this machine; described by OpenAPI.</summary>
internal static class ApiRoutes
{
    private static readonly KeptText<Plan> Plans = new(PlanJson.Write);
    private static readonly KeptText<Catalogue> Catalogues = new(CatalogueJson.Write);

    private const string ParquetType = "application/vnd.apache.parquet";

    /// <summary>The document describes what lies under /api, not the pages, and says whose it is.</summary>
    public static void Describe(OpenApiOptions options)
    {
        options.ShouldInclude = route => route.RelativePath?.StartsWith("api/", StringComparison.Ordinal) == true;
        options.AddDocumentTransformer(
            (document, _, _) =>
            {
                document.Info.Title = "Jumpwright";
                document.Info.Version = ProductVersion.Current;
                document.Info.Description =
                    "What the commands print, over HTTP and on this machine only, and exports. Read only. Advice for training, not medical advice.";
                return Task.CompletedTask;
            }
        );
    }

    public static void Map(WebApplication app, FrontDesk desk)
    {
        app.MapOpenApi("/api/openapi/{documentName}.json");
        RouteGroupBuilder api = app.MapGroup("/api");
        api.MapGet(
                "/athletes",
                () =>
                    desk
                        .Book.Leaves.Select(l => new AthleteJson(l.Athlete.Id, l.Athlete.Name, Sentences.Of(l)))
                        .ToArray()
            )
            .WithSummary("The roll: id, name, and what there is to decide.");
        api.MapGet(
                "/athletes/{id}/trials",
                (string id) =>
                    desk.Book.Find(id) is { } leaf
                        ? new Streamed(
                            WrittenPage.Json,
                            (to, cancel) => new TrialWriter().Write(leaf.History.Trials, to, cancel)
                        )
                        : Answers.Refused($"There is no athlete '{id}'.", StatusCodes.Status404NotFound)
            )
            .Produces<TrialJson[]>()
            .Produces(StatusCodes.Status404NotFound)
            .WithSummary("An athlete's trials, as 'measure --json' prints them.");
        api.MapGet(
                "/athletes/{id}/fhir",
                (string id) =>
                    desk.Book.Find(id) is { } leaf
                        ? new Streamed(
                            "application/fhir+json",
                            (to, cancel) => new FhirWriter().Write(leaf.History.Trials, to, cancel)
                        )
                        : Answers.Refused($"There is no athlete '{id}'.", StatusCodes.Status404NotFound)
            )
            .Produces<object>(StatusCodes.Status200OK, "application/fhir+json")
            .Produces(StatusCodes.Status404NotFound)
            .WithSummary("An athlete's measures as FHIR R4 Observations with units of UCUM.");
        api.MapGet(
                "/athletes/{id}/report",
                (string id) =>
                    desk.Book.Find(id) is { } leaf
                        ? Text(
                            ContractJson.Line(
                                PrescriptionJson.Of(
                                    desk.Pictures.ReportOf(leaf.Dossier, desk.Book.Day).Facts,
                                    desk.Book.Day
                                )
                            )
                        )
                        : Answers.Refused($"There is no athlete '{id}'.", StatusCodes.Status404NotFound)
            )
            .Produces<PrescriptionJson>()
            .Produces(StatusCodes.Status404NotFound)
            .WithSummary("What limits, what changed, the curves and the next tests, as 'report --json' prints them.");
        api.MapGet("/catalogue", () => Results.Bytes(Catalogues.Of(desk.Book.Catalogue), WrittenPage.Json))
            .Produces<object>()
            .WithSummary("The exercises, as 'catalogue --json' prints them.");
        api.MapGet(
                "/plan",
                () =>
                    desk.Book.Week.TryGet(out PlannedWeek? week, out Refusal? refusal)
                        ? Results.Bytes(Plans.Of(week.Plan), WrittenPage.Json)
                        : Answers.Refused(refusal.Sentence)
            )
            .Produces<object>()
            .WithSummary("The plan, as 'plan --json' prints it.");
        api.MapGet(
                "/export/measures.csv",
                () =>
                {
                    using var text = new StringWriter();
                    MeasureTable.Csv(desk.Book, text);
                    return Results.File(
                        Encoding.UTF8.GetBytes(text.ToString()),
                        "text/csv; charset=utf-8",
                        "measures.csv"
                    );
                }
            )
            .Produces<string>(StatusCodes.Status200OK, MediaTypeNames.Text.Csv)
            .WithSummary("Every measure of every trial, SI units, as CSV.");
        api.MapGet(
                "/export/measures.parquet",
                async (CancellationToken cancel) =>
                    Results.File(await MeasureParquet.Of(desk.Book, cancel), ParquetType, "measures.parquet")
            )
            .Produces<Stream>(StatusCodes.Status200OK, ParquetType)
            .WithSummary("The same rows as Parquet.");
    }

    private static IResult Text(string json) => Results.Text(json, "application/json; charset=utf-8");

    internal sealed record AthleteJson(
        [property: JsonPropertyName("id")] string Id,
        [property: JsonPropertyName("name")] string Name,
        [property: JsonPropertyName("sentence")] string Sentence
    );
}
