using System.Security.Cryptography.X509Certificates;

namespace Jumpwright.App.Sharing;

/// <summary>That the pages are shared with other devices, and how.</summary>
/// <param name="Port">Port for other devices, TLS only; 0 takes any that is free.</param>
/// <param name="Certificate">The program's own.</param>
/// <param name="Door">Who may come in.</param>
internal sealed record Sharing(int Port, X509Certificate2 Certificate, Doorkeeper Door);
