using Nookwright.Measure;

namespace Nookwright.Buying;

/// <summary>So much of one edging.</summary>
/// <param name="Edging">The edging's id.</param>
/// <param name="Name">What it is called.</param>
/// <param name="OnParts">What the parts' edges come to.</param>
/// <param name="ToBuy">With what is trimmed off, rounded up.</param>
/// <param name="Why">Why so much, as a sentence.</param>
public sealed record EdgingLine(string Edging, string Name, Length OnParts, Length ToBuy, string Why);
