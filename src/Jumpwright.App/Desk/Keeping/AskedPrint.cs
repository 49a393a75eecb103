using System.Security.Cryptography;
using System.Text.Json;
using Jumpwright.Plans;

namespace Jumpwright.App.Desk.Keeping;

/// <summary>
/// A fingerprint of what a plan depends on: what is open to everybody on each day, with doses, worth and rulings, and the squad's kit,
/// limits and locks. What a plan before adds (that items stay) is left out.
/// </summary>
internal static class AskedPrint
{
    public static string Of(PlanRequest request) =>
        Convert.ToHexString(
            SHA256.HashData(
                JsonSerializer.SerializeToUtf8Bytes(
                    new
                    {
                        request.Slots,
                        request.Kit,
                        request.Fixtures,
                        request.Locks,
                        request.Wishes,
                        request.Limits,
                        request.Overrides,
                        Athletes = request.Athletes.Select(a => new
                        {
                            a.Athlete.Id,
                            a.ContactsPerSessionAtMost,
                            a.ContactsPerWeekAtMost,
                            a.ExercisesPerSessionAtMost,
                            a.HighIntensityContactsPerSessionAtMost,
                            a.Menu,
                            a.Recent,
                            a.Goals,
                            a.Pairs,
                            a.Begun,
                            Rulings = KeptRuling.Of(a),
                        }),
                    },
                    KeptJson.Options
                )
            )
        );
}
