using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Jumpwright.App.Sharing;

/// <summary>
/// The program's own certificate: made once on this machine, kept beside the store for its owner alone, renewed before it ends.
/// A device trusts it by opening the .crt file that lies beside it, once.
/// </summary>
internal static class ShareCertificate
{
    /// <summary>Devices refuse certificates that last much longer than a year.</summary>
    private const int Days = 390;

    /// <summary>The certificate in that folder; made where there is none, or where it ends within a month.</summary>
    /// <param name="folder">Where <c>jumpwright-share.pfx</c> (secret) and <c>jumpwright-share.crt</c> (to be copied) lie.</param>
    /// <param name="now">The time now.</param>
    public static X509Certificate2 In(string folder, DateTimeOffset now)
    {
        string secret = Path.Combine(folder, "jumpwright-share.pfx");
        if (File.Exists(secret))
        {
            try
            {
                X509Certificate2 kept = X509CertificateLoader.LoadPkcs12FromFile(secret, null);
                if (kept.NotAfter > now.LocalDateTime.AddDays(30))
                {
                    return kept;
                }

                kept.Dispose();
            }
            catch (CryptographicException)
            {
                // Damaged: a new one is made, and devices trust it anew.
            }
        }

        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest($"CN=Jumpwright on {Dns.GetHostName()}", key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, true, 0, true));
        request.CertificateExtensions.Add(
            new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature | X509KeyUsageFlags.KeyCertSign, true)
        );
        request.CertificateExtensions.Add(
            new X509EnhancedKeyUsageExtension([new Oid("1.3.6.1.5.5.7.3.1")], critical: false)
        );
        var names = new SubjectAlternativeNameBuilder();
        names.AddDnsName("localhost");
        names.AddDnsName(Dns.GetHostName());
        names.AddDnsName(Dns.GetHostName() + ".local");
        foreach (IPAddress address in Addresses())
        {
            names.AddIpAddress(address);
        }

        request.CertificateExtensions.Add(names.Build());
        using X509Certificate2 made = request.CreateSelfSigned(now.AddDays(-1), now.AddDays(Days));
        byte[] whole = made.Export(X509ContentType.Pkcs12);
        var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        using (var file = new FileStream(secret, options))
        {
            file.Write(whole);
        }

        File.WriteAllText(Path.Combine(folder, "jumpwright-share.crt"), made.ExportCertificatePem() + "\n");
        return X509CertificateLoader.LoadPkcs12(whole, null);
    }

    /// <summary>This machine's addresses in the local network, and its own.</summary>
    public static IEnumerable<IPAddress> Addresses() =>
        NetworkInterface
            .GetAllNetworkInterfaces()
            .Where(n => n.OperationalStatus == OperationalStatus.Up)
            .SelectMany(n => n.GetIPProperties().UnicastAddresses)
            .Select(a => a.Address)
            .Where(a => a.AddressFamily == AddressFamily.InterNetwork)
            .Distinct();
}
