using Nookwright.Flow;
using Nookwright.Lettering;

namespace Nookwright.Drawing;

/// <summary>What the things of a job are, said in words for people who cannot see the picture or point at a thing in it.</summary>
internal static class Captions
{
    /// <summary>Finds captions by id.</summary>
    public static Func<string, string?> Of(Workbook workbook)
    {
        var captions = new Dictionary<string, string>();
        foreach (var thing in workbook.Room.Things)
            captions[thing.Thing.Id] = thing.Thing.Id;
        var letters = workbook.PartList.Parts.ToDictionary(p => p.Id, p => p.Letter);
        string Size(Measure.Length length) => LengthLabel.Of(length, workbook.Lengths);
        foreach (var panel in workbook.BuiltIn.Panels)
        {
            var letter = letters.TryGetValue(panel.Id, out var l) ? $"{l}: " : "";
            captions[panel.Id] =
                $"{letter}{panel.Name}, {Size(panel.Length.Length)} × {Size(panel.Width.Length)} × {Size(panel.Thickness.Length)}";
        }
        return id => captions.GetValueOrDefault(id);
    }
}
