using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>What will not work about a box.</summary>
internal sealed partial class CarcassDesign
{
    public override IEnumerable<Finding> Check(Wanted sizes) =>
        [
            .. JointTooDeep(sizes),
            .. StretchersMeet(sizes),
            .. SlatsMeet(sizes),
            .. PartitionsOutside(sizes),
            .. ShelvesOutside(sizes),
            .. ShelvesMeet(sizes),
            .. PinShelvesMoved(sizes),
            .. TooShallowForPins(sizes),
        ];

    private IEnumerable<Finding> JointTooDeep(Wanted sizes)
    {
        var (depth, thickness) = (At(sizes, "joint-depth"), Thickness(sizes).Length);
        if ((IsLetIn || HasRabbetedBack) && depth >= thickness)
            yield return Mend(
                "carcass.joint-too-deep",
                $"The joints of {Id} go {Job.Print(depth)} deep into a sheet of {Job.Print(thickness)}; make them shallower, half the thickness is usual.",
                "jointDepth"
            );
    }

    private IEnumerable<Finding> StretchersMeet(Wanted sizes)
    {
        if (box.Top != BoxTop.Stretchers)
            yield break;
        var over = At(sizes, "front-stretcher.width") * 2 - At(sizes, "left-side.width");
        if (over.IsPositive)
            yield return Mend(
                "carcass.stretchers-overlap",
                $"The two stretchers of {Id} are {Job.Print(over)} wider together than the box is deep; make them narrower or give it a full top.",
                "stretcherWidth"
            );
    }

    private IEnumerable<Finding> SlatsMeet(Wanted sizes)
    {
        if (Slats == 0)
            yield break;
        var over = At(sizes, "back-slat-1.width") * Slats - At(sizes, "inside-height");
        if (over.IsPositive)
            yield return Mend(
                "carcass.slats-overlap",
                $"{Slats} back slats are {Job.Print(over)} higher together than {Id} is inside; use fewer or lower ones.",
                "back/slatHeight"
            );
    }

    private IEnumerable<Finding> PartitionsOutside(Wanted sizes)
    {
        for (var bay = 1; bay <= Bays; bay++)
        {
            var width = At(sizes, $"bay-{bay}.width");
            if (!width.IsPositive)
                yield return Mend(
                    "carcass.partition-outside",
                    $"Bay {bay} of {Id} comes to {Job.Print(width)}: a partition stands on its neighbour or outside the box; move it between them.",
                    $"partitions/{box.Partitions[Math.Min(bay, box.Partitions.Count) - 1].Id}/at"
                );
        }
    }

    private IEnumerable<Finding> ShelvesOutside(Wanted sizes)
    {
        foreach (var shelf in box.Shelves)
        {
            var over = ShelfRise(sizes, shelf) + Thickness(sizes).Length - At(sizes, "inside-height");
            var under = -ShelfRise(sizes, shelf);
            if (over.IsPositive || under.IsPositive)
                yield return Mend(
                    "carcass.shelf-above-bay",
                    $"Shelf {shelf.Id} of {Id} lies {Job.Print(Length.Max(over, under))} {(over.IsPositive ? "too high" : "too low")} for its bay, "
                        + $"which is {Job.Print(At(sizes, "inside-height"))} high inside; move it.",
                    $"shelves/{shelf.Id}/at"
                );
        }
    }

    private IEnumerable<Finding> ShelvesMeet(Wanted sizes) =>
        from bay in box.Shelves.GroupBy(shelf => shelf.Bay)
        let rising = bay.OrderBy(shelf => ShelfRise(sizes, shelf)).ToList()
        from pair in rising.Zip(rising.Skip(1))
        let room = ShelfRise(sizes, pair.Second) - ShelfRise(sizes, pair.First) - Thickness(sizes).Length
        where room.IsNegative
        select Mend(
            "carcass.shelves-overlap",
            $"Shelves {pair.First.Id} and {pair.Second.Id} of {Id} overlap by {Job.Print(-room)}; move one of them.",
            $"shelves/{pair.Second.Id}/at"
        );

    private IEnumerable<Finding> PinShelvesMoved(Wanted sizes) =>
        from shelf in box.Shelves
        let moved = ShelfRise(sizes, shelf) - ShelfAt(sizes, shelf).Length
        where moved != Length.Zero
        select new Finding(
            "carcass.pin-shelf-moved",
            Severity.Note,
            $"Shelf {shelf.Id} of {Id} lies {Job.Print(moved.Abs())} {(moved.IsPositive ? "higher" : "lower")} than asked, on the nearest hole "
                + "of the column its bay shares.",
            [Id, $"{Id}.{shelf.Id}"],
            "32 mm pitch: common practice, no source"
        )
        {
            Field = Field($"shelves/{shelf.Id}/at"),
        };

    private IEnumerable<Finding> TooShallowForPins(Wanted sizes) =>
        from bay in Enumerable.Range(1, Bays)
        where PinShelves(bay).Any() && PinColumns(sizes, bay).Count < 2
        select new Finding(
            "carcass.too-shallow-for-pins",
            Severity.Warning,
            $"{Id} is too shallow for two columns of pins in bay {bay}: it is {Job.Print(At(sizes, "inside-depth"))} deep inside, and the "
                + "columns stand 37 mm from front and back and at least 32 mm apart. Use a fixed shelf.",
            [Id],
            "32 mm system: common practice, no source"
        );

    private Finding Mend(string rule, string message, string step) =>
        new(rule, Severity.MustMend, message, [Id]) { Field = Field(step) };
}
