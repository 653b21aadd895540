namespace Nookwright.Parts;

/// <summary>Gives letters: truly equal parts share one, in the order in which they first appear.</summary>
/// <remarks>What comes later in the job never changes an earlier letter.</remarks>
internal sealed class PartLetters
{
    private readonly Dictionary<string, string> _byDescription = [];

    /// <summary>The letter of a part so described.</summary>
    public string Of(string description)
    {
        if (!_byDescription.TryGetValue(description, out var letter))
            _byDescription[description] = letter = Number(_byDescription.Count);
        return letter;
    }

    /// <summary>A to Z, then AA to AZ, BA and on.</summary>
    internal static string Number(int index) =>
        (index < 26 ? "" : Number((index / 26) - 1)) + (char)('A' + (index % 26));
}
