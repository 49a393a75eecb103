using Microsoft.Playwright;

namespace Jumpwright.Tests.Outside.Pages;

/// <summary>
/// Whoever has no mouse: on every page each thing that can be pressed, opened or typed into is a stop of the Tab key,
/// is seen to be one, and nothing asks to be clicked that is none.
/// </summary>
[Collection("pages")]
public class KeyboardTests(ServedDemo demo)
{
    // Marks what there is to do on the page as it stands: seen, not disabled, not inside something folded. Of the choices of
    // one question (radio buttons) the arrow keys reach the others, so that they count as one.
    private const string Mark = """
        () => {
          const asked = new Set();
          const all = [...document.querySelectorAll(
            'a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex]:not([tabindex="-1"])')]
            .filter(e => e.checkVisibility({ visibilityProperty: true }) && !e.disabled)
            .filter(e => {
              if (e.type !== 'radio') return true;
              const question = (e.form?.id ?? '') + ' ' + e.name;
              return e.checked || (!document.querySelector(`input[name="${CSS.escape(e.name)}"]:checked`) && !asked.has(question)
                && asked.add(question));
            });
          all.forEach((e, i) => e.dataset.stop = i);
          return all.length;
        }
        """;

    // What has the focus, and whether a ring or a frame is drawn round it. In a date and in a time the browser marks the part
    // that is being typed, which no style of the page's tells.
    private const string Stop = """
        () => {
          const e = document.activeElement;
          if (!e || e === document.body || e === document.documentElement) return ['', ''];
          const style = getComputedStyle(e);
          const seen = e.matches('input[type=date], input[type=time]') || style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) > 0 || style.boxShadow !== 'none';
          return [e.dataset.stop ?? '?', seen ? '' : e.outerHTML.slice(0, 160)];
        }
        """;

    private const string Missed = """
        reached => [...document.querySelectorAll('[data-stop]')]
          .filter(e => !reached.includes(e.dataset.stop)).map(e => e.outerHTML.slice(0, 160))
        """;

    // The hand that a pointer turns into says "click me".
    private const string OnlyForAPointer = """
        () => [...document.querySelectorAll('body *')]
          .filter(e => getComputedStyle(e).cursor === 'pointer' && e.checkVisibility()
            && !e.closest('a[href], button, input, select, textarea, summary, label, [tabindex]'))
          .map(e => e.outerHTML.slice(0, 160))
        """;

    public static TheoryData<string> Pages() => EveryPageTests.Pages();

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Page_EverythingToDo_IsAStopOfTheTabKey_AndSeenToBeOne(string name)
    {
        IPage page = await EveryPageTests.Opened(demo, name, 820);
        int all = await page.EvaluateAsync<int>(Mark);
        Assert.Empty(await page.EvaluateAsync<string[]>(OnlyForAPointer));

        var reached = new HashSet<string>(StringComparer.Ordinal);
        var unseen = new List<string>();
        await page.EvaluateAsync("() => { document.activeElement?.blur(); getSelection().removeAllRanges(); }");
        // Some stops have parts of their own (a date's day, month and year), so there are more presses than stops.
        for (int press = 0; press < (4 * all) + 20 && reached.Count < all; press++)
        {
            await page.Keyboard.PressAsync("Tab");
            string[] stop = await page.EvaluateAsync<string[]>(Stop);
            reached.Add(stop[0]);
            reached.Remove("");
            reached.Remove("?");
            if (stop[1].Length > 0)
            {
                unseen.Add(stop[1]);
            }
        }

        Assert.Empty(await page.EvaluateAsync<string[]>(Missed, reached.ToArray()));
        Assert.Empty(unseen);
        await page.CloseAsync();
    }
}
