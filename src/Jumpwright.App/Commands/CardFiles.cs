using Jumpwright.App.Desk;
using Jumpwright.App.Settings;
using Jumpwright.App.Wording;
using Jumpwright.Paper;
using Jumpwright.Sessions;

namespace Jumpwright.App.Commands;

/// <summary>Writes what is printed from a plan into a folder.</summary>
internal static class CardFiles
{
    /// <summary>One PDF a card and one a coach's sheet; names begin with the session, so that a listing is in order of time.</summary>
    /// <param name="week">What was planned.</param>
    /// <param name="material">What is known.</param>
    /// <param name="settings">In which language and units; English where no language is set.</param>
    /// <param name="folder">Where to.</param>
    /// <param name="paper">Sheet of the cards.</param>
    /// <param name="step">Told after each file.</param>
    /// <param name="cancel">Ends it between two files.</param>
    /// <returns>How many files were written.</returns>
    public static int Write(
        PlannedWeek week,
        SquadMaterial material,
        HouseSettings settings,
        string folder,
        CardPaper paper,
        Action step,
        CancellationToken cancel
    )
    {
        Speech.Use(Speech.Standard.As(settings) with { Catalogue = material.Catalogue });
        Directory.CreateDirectory(folder);
        var pictures = new PictureBook(material, units: settings.Units);
        int written = 0;
        foreach (SessionCard card in week.Cards)
        {
            cancel.ThrowIfCancellationRequested();
            byte[] pdf = SpokenCards.Pdf(card, material.Catalogue, pictures, paper);
            File.WriteAllBytes(Path.Combine(folder, NameOf(card)), pdf);
            written++;
            step();
        }

        foreach (CoachSheet sheet in week.Sheets)
        {
            cancel.ThrowIfCancellationRequested();
            File.WriteAllBytes(
                Path.Combine(folder, NameOf(sheet)),
                CoachSheetPdf.Render(sheet, SpokenSentences.Writer)
            );
            written++;
            step();
        }

        return written;
    }

    /// <summary>File name of a coach's sheet; ids hold no underscore, so no athlete's card has this name.</summary>
    public static string NameOf(CoachSheet sheet) => $"{sheet.SessionId}_coach.pdf";

    /// <summary>File name of a card.</summary>
    public static string NameOf(SessionCard card) => $"{card.SessionId}-{card.AthleteId}.pdf";
}
