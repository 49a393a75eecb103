using System.Globalization;
using System.Net;
using Jumpwright.App.Kit;
using Jumpwright.Calculators;
using Jumpwright.Quantities;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>Every calculator has its page; it answers what stands there at first and refuses what can't be meant.</summary>
[Collection("pages")]
public class KitDeskTests(ServedDemo demo)
{
    public static TheoryData<string> Tools => [.. KitDesk.Tools.Select(t => t.Id)];

    [Theory]
    [InlineData(5.0)]
    [InlineData(0.56)]
    [InlineData(66)]
    [InlineData(1900)]
    public void TheTicksOfAnAxis_StandWhereTheirNumberIs(double top)
    {
        double[] ticks = [.. Jumpwright.App.Kit.CurveDrawing.Ticks(top)];

        Assert.InRange(ticks.Length, 3, 6);
        Assert.Equal(0, ticks[0]);
        Assert.True(ticks[^1] <= top * 1.001);
        Assert.All(
            ticks,
            t =>
                Assert.Equal(
                    t,
                    double.Parse(t.ToString("0.####", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture),
                    9
                )
        );
    }

    [Fact]
    public void EveryCalculatorOfTheList_HasATool_AndEveryToolItsOwnName()
    {
        Assert.Empty(CalculatorList.All.Select(b => b.Id).Except(KitDesk.Tools.Select(t => t.Basis.Id)));
        Assert.Equal(KitDesk.Tools.Length, KitDesk.Tools.Select(t => t.Id).Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Tools))]
    public void Tool_AnswersItsFirstValues_AndRefusesEachNumberOutsideWithASentence(string id)
    {
        KitTool tool = KitDesk.Tools.Single(t => t.Id == id);
        KitAnswer answer = Answer(tool, f => f.Start).Require();
        Assert.NotEmpty(answer.Result.Values);
        Assert.StartsWith("<svg", answer.Picture, StringComparison.Ordinal);

        string[] refused =
        [
            .. tool
                .Fields.Where(f => f.Choices.Length == 0)
                .Select(f =>
                    Answer(tool, g => g == f ? Outside(f) : g.Start).TryGet(out _, out Refusal? no) ? null : no.Sentence
                )
                .OfType<string>(),
        ];
        Assert.NotEmpty(refused);
        Assert.All(refused, sentence => Assert.Matches(@"^\S.{20,}[.?]$", sentence));
        Assert.True(
            refused.Length >= tool.Fields.Count(f => f.Choices.Length == 0) - 1,
            $"{id}: {refused.Length} of {tool.Fields.Length} fields are guarded"
        );
    }

    /// <summary>Two bands are two bands: a second one that was not measured, or pulls otherwise, is not held by the first one's readings.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("0.8:90, 1.0:170, 1.2:240, 1.6:360, 2.0:480")]
    public void TheSecondBand_IsMeasuredByItself(string right)
    {
        KitTool tool = KitDesk.Tools.Single(t => t.Id == "bands");
        string With(KitField field, string second) =>
            field.Name switch
            {
                "wear" => "yes",
                "right" => second,
                _ => field.Start,
            };
        KitAnswer alike = Answer(tool, f => With(f, f.Start)).Require();
        Assert.Equal(CheckState.Met, Worst(alike));
        Assert.False(
            Answer(tool, f => With(f, right)).TryGet(out KitAnswer? other, out _) && Worst(other) == CheckState.Met
        );

        static CheckState Worst(KitAnswer answer) =>
            answer.Checks.All(c => c.State == CheckState.Met) ? CheckState.Met : CheckState.NotMet;
    }

    [Theory]
    [MemberData(nameof(Tools))]
    public async Task Page_ShowsFormulaSourcesAndDispute_WhetherItAnswersOrRefuses(string id)
    {
        KitTool tool = KitDesk.Tools.Single(t => t.Id == id);
        KitField number = tool.Fields.First(f => f.Choices.Length == 0);
        using var client = new HttpClient { BaseAddress = new Uri(demo.Address) };
        foreach (string query in (string[])["", $"&{number.Name}=-7"])
        {
            string html = PageText.Of(
                await client.GetStringAsync($"/kit?tool={id}{query}", TestContext.Current.CancellationToken)
            );
            Assert.Contains(tool.Basis.Formula, html, StringComparison.Ordinal);
            Assert.Contains(tool.Basis.Dispute!, html, StringComparison.Ordinal);
            Assert.All(tool.Basis.Sources, s => Assert.Contains(s.Text, html, StringComparison.Ordinal));
        }
    }

    /// <summary>
    /// Words that no reader can hold together: a number that nobody gave, a bound of 0 that 0 lies outside of, a blank before a colon;
    /// and what the arithmetic is for stands by itself, never in one breath with "met".
    /// </summary>
    [Theory]
    [MemberData(nameof(Tools))]
    public async Task Page_OfEmptyZeroOrAbsurdFields_SaysWhatIsWrong_AndThatItOpensNothing(string id)
    {
        KitTool tool = KitDesk.Tools.Single(t => t.Id == id);
        using var client = new HttpClient { BaseAddress = new Uri(demo.Address) };
        foreach (
            string query in tool
                .Fields.Where(f => f.Choices.Length == 0)
                .SelectMany(f => new[] { "", "0", "-1", "1e9", "abc" }.Select(v => $"&{f.Name}={v}"))
                .Prepend("")
        )
        {
            string html = PageText.Of(
                await client.GetStringAsync($"/kit?tool={id}{query}", TestContext.Current.CancellationToken)
            );
            string outcome = html[
                html.IndexOf("What comes out", StringComparison.Ordinal)..html.IndexOf(
                    "id=\"setup\"",
                    StringComparison.Ordinal
                )
            ];
            Assert.DoesNotContain("NaN", outcome, StringComparison.Ordinal);
            Assert.DoesNotContain("∞", outcome, StringComparison.Ordinal);
            Assert.DoesNotContain(" : ", outcome, StringComparison.Ordinal);
            Assert.DoesNotMatch("given as 0[^:.]*: between 0 ", outcome);
            Assert.DoesNotMatch("[Mm]et[:.][^<]*opens no exercise", outcome);
            if (outcome.Contains("class=\"note\"", StringComparison.Ordinal))
            {
                Assert.Contains(">This is arithmetic with what is typed below.", outcome, StringComparison.Ordinal);
            }
        }
    }

    private static string Outside(KitField field) =>
        field.Start.Contains(':', StringComparison.Ordinal) ? "-9:-9, -8:-8" : "-99999999";

    private static Outcome<KitAnswer> Answer(KitTool tool, Func<KitField, string> typed) =>
        tool.Answer(new KitTyped(name => typed(tool.Fields.Single(f => f.Name == name))));
}
