using Nookwright.Measure;
using Nookwright.Shop;

namespace Nookwright.Lists;

/// <summary>Reads the places of a sheet that nothing may be cut from: <c>6 x 4 at 10 x 0; 3 x 3 at 90 x 45</c>.</summary>
internal static class BadPlaces
{
    /// <summary>Each as its length by its width, at its distance along the sheet by its distance across, from the sheet's low corner.</summary>
    public static IReadOnlyList<BadArea> Read(CsvRow row, string column, LengthUnit bare, Length length, Length width)
    {
        var places = new List<BadArea>();
        foreach (
            var text in row.Text(column)
                .Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
        )
            if (Numbers(text) is not [var l, var w, var x, var y])
                row.Refuse(
                    column,
                    $"\"{text}\" is no place on a sheet; write its size and where it begins, as 6 x 4 at 10 x 0."
                );
            else
                places.Add(
                    new(
                        row.Read(column, x, bare),
                        row.Read(column, y, bare),
                        row.Read(column, l, bare),
                        row.Read(column, w, bare)
                    )
                );
        if (row.Trouble is null && places.Any(p => !IsOn(p, length, width)))
            row.Refuse(
                column,
                "A bad place lies beside the sheet, or has no size; write size and place as measured on the sheet."
            );
        return places;
    }

    private static string[] Numbers(string text)
    {
        const StringSplitOptions Trim = StringSplitOptions.TrimEntries;
        var halves = text.Replace('×', 'x').Split(" at ", Trim);
        return halves.Length == 2 ? [.. halves.SelectMany(half => half.Split('x', Trim))] : [];
    }

    private static bool IsOn(BadArea place, Length length, Length width) =>
        place.Length.IsPositive
        && place.Width.IsPositive
        && place.X >= Length.Zero
        && place.Y >= Length.Zero
        && place.X < length
        && place.Y < width;
}
