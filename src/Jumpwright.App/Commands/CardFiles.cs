using Jumpwright.App.Desk;
using Jumpwright.Paper;
using Jumpwright.Sessions;

namespace Jumpwright.App.Commands;

/// <summary>Writes what is printed from a plan into a folder.</summary>
internal static class CardFiles
{
    /// <summary>One PDF a card and one a coach's sheet; names begin with the session, so that a listing is in order of time.</summary>
    /// <returns>How many files were written.</returns>
    public static int Write(
        PlannedWeek week,
        SquadMaterial material,
        string folder,
        CardPaper paper,
        Action step,
        CancellationToken cancel
    )
    {
        Directory.CreateDirectory(folder);
        var pictures = new PictureBook(material);
        int written = 0;
        foreach (SessionCard card in week.Cards)
        {
            cancel.ThrowIfCancellationRequested();
            byte[] pdf = CardPdf.Render(card, pictures.Of(card.AthleteId, card.Date), paper);
            File.WriteAllBytes(Path.Combine(folder, NameOf(card)), pdf);
            written++;
            step();
        }

        foreach (CoachSheet sheet in week.Sheets)
        {
            cancel.ThrowIfCancellationRequested();
            File.WriteAllBytes(Path.Combine(folder, NameOf(sheet)), CoachSheetPdf.Render(sheet));
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
