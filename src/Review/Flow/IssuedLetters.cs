using Nookwright.Parts;
using Nookwright.Rounds;

namespace Nookwright.Flow;

/// <summary>Parts that are issued keep the letters that are written on them; others take none of those.</summary>
internal static class IssuedLetters
{
    /// <summary>The list with its letters in keeping with what is issued.</summary>
    public static PartList Kept(PartList list, IssuedPlan? issued)
    {
        if (issued is null)
            return list;
        var taken = issued.Letters.ToHashSet();
        var owners = new Dictionary<string, string>();
        var given = new Dictionary<string, string>();
        return list with { Parts = [.. list.Parts.Select(Lettered)] };

        Part Lettered(Part part) => part with { Letter = Written(part) ?? Fresh(part.Letter) };

        // Two kinds of parts can have had one letter; the first keeps it.
        string? Written(Part part)
        {
            var letter = issued.LetterOf(part.Id, part.CutLength.Length, part.CutWidth.Length);
            return letter is not null && (owners.TryAdd(letter, part.Letter) || owners[letter] == part.Letter)
                ? letter
                : null;
        }

        string Fresh(string letter)
        {
            if (!given.TryGetValue(letter, out var fresh))
            {
                fresh = letter;
                for (var round = issued.Rounds.Count + 1; !taken.Add(fresh); round++)
                    fresh = $"{letter}{round}";
                given[letter] = fresh;
            }
            return fresh;
        }
    }
}
