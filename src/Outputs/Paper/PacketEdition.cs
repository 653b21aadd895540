using System.Security.Cryptography;
using System.Text;

namespace Nookwright.Paper;

/// <summary>Which printing of a job's packet this is, so that an old page on the shop's wall can be told from a new one.</summary>
/// <param name="Date">The day it is made, handed in.</param>
/// <param name="Revision">Short, the same for the same document.</param>
public sealed record PacketEdition(DateOnly Date, string Revision)
{
    /// <summary>The edition of a document: its revision is the start of the SHA-256 of its text.</summary>
    /// <param name="date">The day the packet is made.</param>
    /// <param name="document">The document's text as saved.</param>
    public static PacketEdition Of(DateOnly date, string document) =>
        new(date, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(document)))[..8]);
}
