using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>What will not work about doors.</summary>
internal sealed partial class DoorDesign
{
    public override IEnumerable<Finding> Check(Wanted sizes) =>
        IsInset
            ?
            [
                .. TooLarge(sizes, "width", At(sizes, $"{First}.{WidthSide}"), At(sizes, "opening-width"), doors.Count),
                .. TooLarge(sizes, "height", At(sizes, $"{First}.{HeightSide}"), At(sizes, "opening-height"), 1),
                .. CornerBinds(sizes),
            ]
            :
            [
                .. TooSmall(
                    sizes,
                    "width",
                    At(sizes, $"{First}.{WidthSide}") * doors.Count,
                    At(sizes, "opening-width")
                ),
                .. TooSmall(sizes, "height", At(sizes, "height"), At(sizes, "opening-height")),
            ];

    /// <summary>Inset doors that do not go into their opening, or leave less than their gap.</summary>
    private IEnumerable<Finding> TooLarge(Wanted sizes, string field, Length one, Length opening, int count)
    {
        var isGiven = (field == "width" ? doors.Width : doors.Height) is not null;
        var over = one * count - opening;
        var missing = over + At(sizes, "gap") * (count + 1);
        if (!isGiven || !missing.IsPositive)
            yield break;
        var most = new Length((opening - At(sizes, "gap") * (count + 1)).Nanometres / count).FloorTo(Job.Finished.Mark);
        var cure =
            $"Leave the {field} out, or make it {Job.Print(most)} or less, which leaves gaps of {Job.Print(At(sizes, "gap"))}.";
        yield return over.IsPositive
            ? new(
                field == "width" ? "doors.wider-than-opening" : "doors.higher-than-opening",
                Severity.MustMend,
                $"{Many(count)} of {Id} {Come(count)} to {Job.Print(one * count)} in {field}, {Job.Print(over)} more than the opening of {doors.Box}, "
                    + $"which is {Job.Print(opening)}. {cure}",
                [Id, doors.Box]
            )
            {
                Field = Field(field),
            }
            : new(
                "doors.gap-too-small",
                Severity.Warning,
                $"{Many(count)} of {Id} {Leave(count)} {Job.Print(-over)} in all for {count + 1} gaps in {field}, {Job.Print(missing)} less than asked. {cure}",
                [Id, doors.Box]
            )
            {
                Field = Field(field),
            };
    }

    /// <summary>Overlay doors that leave a part of their opening uncovered.</summary>
    private IEnumerable<Finding> TooSmall(Wanted sizes, string field, Length covered, Length opening)
    {
        var gap = field == "width" && IsPair ? At(sizes, "gap") : Length.Zero;
        var open = opening - covered - gap;
        if (open.IsPositive)
            yield return new(
                "doors.narrower-than-opening",
                Severity.MustMend,
                $"The {field} of {Id} leaves {Job.Print(open)} of the opening of {doors.Box} uncovered; leave the {field} out, or make the doors larger.",
                [Id, doors.Box]
            )
            {
                Field = Field(field),
            };
    }

    /// <summary>
    /// A narrow inset door jams with its free corner: the corner swings in a circle of radius sqrt(w² + t²), so the gap has to
    /// be t²/2w at least (geometry; as in trade practice: 1/16 in jams a 3/4 in door narrower than about 4 1/2 in).
    /// </summary>
    private IEnumerable<Finding> CornerBinds(Wanted sizes)
    {
        var (width, thickness) = (At(sizes, $"{First}.{WidthSide}"), Thickness(sizes).Length);
        var gap = SideGap(sizes).Length;
        var square = (Int128)thickness.Nanometres * thickness.Nanometres;
        if (!gap.IsPositive || (Int128)gap.Nanometres * width.Nanometres * 2 >= square)
            yield break;
        var least = new Length((long)(square / (2 * (Int128)width.Nanometres))).CeilingTo(Job.Finished.Mark);
        yield return new(
            "doors.corner-binds",
            Severity.Warning,
            $"The free corner of a door of {Id} binds: {Job.Print(width)} wide and {Job.Print(thickness)} thick it wants a gap of {Job.Print(least)}, "
                + $"and has {Job.Print(gap)}. Widen the gap, or plane the inner corner off.",
            [Id],
            "geometry: gap ≥ t²/2w"
        )
        {
            Field = Field("gap"),
        };
    }

    private static string Many(int count) => count == 1 ? "The door" : "The two doors";

    private static string Come(int count) => count == 1 ? "comes" : "come";

    private static string Leave(int count) => count == 1 ? "leaves" : "leave";
}
