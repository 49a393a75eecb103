using System.Globalization;
using System.IO.Pipelines;
using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Jumpwright.App.Api;
using Jumpwright.App.Contracts;
using Jumpwright.App.Desk;
using Jumpwright.Athletes;
using Jumpwright.Plans;
using Jumpwright.Quantities;
using Parquet;
using Parquet.Schema;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>The same shapes as the commands, over HTTP; exports that other programs read.</summary>
[Collection("pages")]
public class ApiTests(ServedDemo demo)
{
    private IEnumerable<(MeasuredTrial Trial, Measure Measure)> All =>
        demo.Desk.Book.Leaves.SelectMany(l => l.History.Trials).SelectMany(t => t.Trial.Measures.Select(m => (t, m)));

    [Fact]
    public async Task OpenApi_DescribesEveryAddressOfTheApi()
    {
        JsonNode api = JsonNode.Parse(await Text("/api/openapi/v1.json"))!;
        Assert.StartsWith("3.", (string)api["openapi"]!, StringComparison.Ordinal);
        string[] paths = [.. api["paths"]!.AsObject().Select(p => p.Key)];
        foreach (
            string path in (string[])
                [
                    "/api/athletes",
                    "/api/athletes/{id}/trials",
                    "/api/athletes/{id}/fhir",
                    "/api/athletes/{id}/report",
                    "/api/plan",
                    "/api/catalogue",
                    "/api/export/measures.csv",
                    "/api/export/measures.parquet",
                ]
        )
        {
            Assert.Contains(path, paths);
            JsonObject answer = api["paths"]![path]!["get"]!["responses"]!["200"]!["content"]!.AsObject();
            Assert.NotEmpty(answer);
        }

        Assert.All(paths, path => Assert.StartsWith("/api/", path, StringComparison.Ordinal));
        Assert.Equal("Jumpwright", (string)api["info"]!["title"]!);
        Assert.Equal(ProductVersion.Current, (string)api["info"]!["version"]!);
    }

    [Fact]
    public async Task OpenApi_NamesTheFieldsOfATrial()
    {
        JsonNode api = JsonNode.Parse(await Text("/api/openapi/v1.json"))!;
        JsonObject fields = api["components"]!["schemas"]!["TrialJson"]!["properties"]!.AsObject();
        JsonObject trial = JsonNode.Parse(await Text("/api/athletes/a01/trials"))!.AsArray()[0]!.AsObject();
        Assert.All(trial, field => Assert.True(fields.ContainsKey(field.Key), field.Key));
    }

    [Fact]
    public async Task Trials_AreWhatMeasurePrints()
    {
        JsonArray trials = JsonNode.Parse(await Text("/api/athletes/a01/trials"))!.AsArray();
        MeasuredTrial first = demo.Desk.Book.Find("a01")!.History.Trials[0];
        Assert.Equal(demo.Desk.Book.Find("a01")!.History.Trials.Length, trials.Count);
        Assert.Equal(1, (int)trials[0]!["schema"]!);
        Assert.Equal("measured", (string)trials[0]!["verdict"]!);
        Measure measure = first.Trial.Measures[0];
        Assert.Equal(measure.Value, (double)trials[0]!["measures"]![measure.Name]!["value"]!);
    }

    /// <summary>
    /// Thousands of objects of one shape are written by filling in two numbers: to the byte what the serialiser makes of them, whoever
    /// wrote what into a file's name or a method.
    /// </summary>
    [Fact]
    public async Task TrialsAndFhir_AreToTheByteWhatTheSerialiserWrites()
    {
        foreach (AthleteLeaf leaf in demo.Desk.Book.Leaves)
        {
            MeasuredTrial[] trials = [.. leaf.History.Trials];
            Assert.Equal(Plainly(trials), await Text($"/api/athletes/{leaf.Athlete.Id}/trials"));
            Assert.Equal(PlainFhir(trials), await Text($"/api/athletes/{leaf.Athlete.Id}/fhir"));
        }

        MeasuredTrial some = demo.Desk.Book.Find("a01")!.History.Trials[0];
        Measure m = some.Trial.Measures[0];
        MeasuredTrial[] odd =
        [
            some,
            some with
            {
                File = "recordings/\"measures\":{} @id@ </script>\u202E \u00E4.csv",
                AthleteId = "=cmd|'/C calc'!A0 @subject@",
                Trial = some.Trial with
                {
                    Warnings = ["\"measures\":{}", "Höhe > 2 & mehr"],
                    Doubtful = [m.Name],
                    Measures =
                    [
                        new(m.Name, -0.0, m.Unit, 0, "by \"hand\" & <tape>"),
                        new(m.Name + "_x", 1e-300, Unit.Newton, 1e21, m.Method),
                        new("a", 5, Unit.Second, 0.1 + 0.2, "@day@"),
                    ],
                },
            },
            some with
            {
                Trial = some.Trial with { Measures = [] },
            },
            some,
        ];
        Assert.Equal(Plainly(odd), await Streamed(to => new TrialWriter().Write(odd, to, default)));
        Assert.Equal(PlainFhir(odd), await Streamed(to => new FhirWriter().Write(odd, to, default)));
        Assert.Equal(PlainFhir([]), await Streamed(to => new FhirWriter().Write([], to, default)));
    }

    /// <summary>What is kept of a plan is the plan's: planned anew, it is written anew.</summary>
    [Fact]
    public async Task Plan_IsWhatPlanPrints_AndAnotherPlanIsAnother()
    {
        await using SquadSite site = await SquadSite.Open();
        site.Plan();
        Plan first = site.Desk.Book.PlanOrNull!.Plan;
        Assert.Equal(PlanJson.Write(first), WebUtility.HtmlDecode((await site.Get("/api/plan")).Text));
        await site.Post("/settings/rules/in", ("section", "kit"), ("id", "plyo-box"), ("count", "1"));
        site.Plan();
        Plan second = site.Desk.Book.PlanOrNull!.Plan;
        Assert.NotEqual(PlanJson.Write(first), PlanJson.Write(second));
        Assert.Equal(PlanJson.Write(second), WebUtility.HtmlDecode((await site.Get("/api/plan")).Text));
    }

    private static readonly JsonSerializerOptions Sparse = new()
    {
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    };

    private static string Plainly(MeasuredTrial[] trials) => ContractJson.Line(trials.Select(TrialJson.Of));

    private static string PlainFhir(MeasuredTrial[] trials) =>
        JsonSerializer.Serialize(
            FhirObservations.BundleOf(
                trials.SelectMany(t => t.Trial.Measures.Select(measure => FhirObservations.Entry(t, measure))).ToArray()
            ),
            Sparse
        );

    private static async Task<string> Streamed(Func<PipeWriter, Task> write)
    {
        using var bytes = new MemoryStream();
        PipeWriter to = PipeWriter.Create(bytes, new StreamPipeWriterOptions(leaveOpen: true));
        await write(to);
        await to.CompleteAsync();
        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    [Fact]
    public async Task Report_IsWhatReportJsonPrints()
    {
        JsonNode report = JsonNode.Parse(await Text("/api/athletes/a01/report"))!;
        Assert.Equal("a01", (string)report["athlete"]!);
        Assert.NotEmpty(report["findings"]!.AsArray());
        Assert.NotEmpty(report["next_tests"]!.AsArray());
    }

    [Fact]
    public async Task Csv_HoldsEveryMeasureOnce_InSi()
    {
        string[] lines = (await Text("/api/export/measures.csv")).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(All.Count() + 1, lines.Length);
        (MeasuredTrial trial, Measure measure) = All.First();
        string[] cells = lines[1].Split(',');
        Assert.Equal(trial.AthleteId, cells[0]);
        Assert.Equal(measure.Value, double.Parse(cells[7], CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+cmd|' /C calc'!A0", "'+cmd|' /C calc'!A0")]
    [InlineData("-2+3", "'-2+3")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("a,\"b\"", "\"a,\"\"b\"\"\"")]
    [InlineData("cmj-1.csv", "cmj-1.csv")]
    [InlineData("", "")]
    public void CsvCell_ThatASpreadsheetWouldRun_IsText(string text, string cell) =>
        Assert.Equal(cell, MeasureTable.Cell(text));

    [Fact]
    public async Task Parquet_ReadBack_HoldsTheSameRows()
    {
        byte[] bytes = await Bytes("/api/export/measures.parquet");
        await using ParquetReader reader = await ParquetReader.CreateAsync(
            new MemoryStream(bytes),
            cancellationToken: TestContext.Current.CancellationToken
        );
        Assert.Equal(12, reader.Schema.DataFields.Length);
        long rows = Enumerable.Range(0, reader.RowGroupCount).Sum(i => reader.OpenRowGroupReader(i).RowCount);
        Assert.Equal(All.Count(), rows);
        DataField value = reader.Schema.DataFields.First(f => f.Name == "value");
        using ParquetRowGroupReader group = reader.OpenRowGroupReader(0);
        double[] values = new double[group.RowCount];
        await group.ReadAsync<double>(
            value,
            values.AsMemory(),
            cancellationToken: TestContext.Current.CancellationToken
        );
        Assert.Equal(All.Select(a => a.Measure.Value), values);
    }

    [Fact]
    public async Task Fhir_EveryMeasureIsAnObservation_WithAUnitOfUcum()
    {
        JsonNode bundle = JsonNode.Parse(await Text("/api/athletes/a01/fhir"))!;
        Assert.Equal("Bundle", (string)bundle["resourceType"]!);
        JsonNode[] observations = [.. bundle["entry"]!.AsArray().Select(e => e!["resource"]!)];
        Assert.Equal(demo.Desk.Book.Find("a01")!.History.Trials.Sum(t => t.Trial.Measures.Length), observations.Length);
        Assert.Equal(observations.Length, observations.Select(o => (string)o["id"]!).Distinct().Count());
        string[] ucum = ["1", "m", "s", "kg", "N", "W", "J", "m/s", "N/m", "N/s", "N.s", "%", "deg"];
        foreach (JsonNode observation in observations)
        {
            Assert.Equal("Observation", (string)observation["resourceType"]!);
            Assert.Contains((string)observation["status"]!, (string[])["final", "preliminary"]);
            Assert.Matches("^[A-Za-z0-9.-]{1,64}$", (string)observation["id"]!);
            Assert.Equal("Patient/a01", (string)observation["subject"]!["reference"]!);
            Assert.Equal("http://unitsofmeasure.org", (string)observation["valueQuantity"]!["system"]!);
            Assert.Contains((string)observation["valueQuantity"]!["code"]!, ucum);
            Assert.Matches(@"^\d{4}-\d\d-\d\d$", (string)observation["effectiveDateTime"]!);
            Assert.True((double)observation["component"]![0]!["valueQuantity"]!["value"]! >= 0);
        }

        Assert.All(All, a => Assert.True(a.Measure.Unit.Symbol == "°" || ucum.Contains(a.Measure.Unit.Symbol)));
    }

    [Fact]
    public async Task Plan_IsTheContractsObject_AndSomebodyUnknownIsASentence()
    {
        JsonNode plan = JsonNode.Parse(await Text("/api/plan"))!;
        Assert.Equal(1, (int)plan["schema"]!);
        using var client = new HttpClient();
        using HttpResponseMessage nobody = await client.GetAsync(
            new Uri(demo.Address + "/api/athletes/%3Cscript%3E/trials"),
            TestContext.Current.CancellationToken
        );
        Assert.Equal(HttpStatusCode.NotFound, nobody.StatusCode);
        Assert.Equal("application/json", nobody.Content.Headers.ContentType?.MediaType);
        Assert.Equal("nosniff", nobody.Headers.GetValues("X-Content-Type-Options").Single());
    }

    private async Task<string> Text(string path)
    {
        using var client = new HttpClient();
        return await client.GetStringAsync(new Uri(demo.Address + path), TestContext.Current.CancellationToken);
    }

    private async Task<byte[]> Bytes(string path)
    {
        using var client = new HttpClient();
        return await client.GetByteArrayAsync(new Uri(demo.Address + path), TestContext.Current.CancellationToken);
    }
}
