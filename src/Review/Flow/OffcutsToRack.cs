using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Flow;

/// <summary>The offcuts of a job on their way to the rack of another.</summary>
public static class OffcutsToRack
{
    /// <summary>The offcuts worth keeping that lie there once the issued rounds are cut; none while nothing is issued.</summary>
    public static IReadOnlyList<KeptOffcut> Of(Workbook book)
    {
        if (book is not { Plan: { } plan, Issued: { } issued })
            return [];
        var pieces = issued.Rounds.SelectMany(r => r.Plan.Workpieces).Select(p => p.Id).ToHashSet();
        return [.. KeptOffcut.Of(plan).Where(o => pieces.Contains(o.Workpiece))];
    }

    /// <summary>What an offcut is called on another job's rack: its job and the mark written on it.</summary>
    public static string NameOf(KeptOffcut offcut, string from) => $"{from}-{offcut.Mark}";

    /// <summary>The other document with offcuts on its rack; those that are there already are left alone.</summary>
    /// <param name="offcuts">The offcuts.</param>
    /// <param name="job">The document they come from.</param>
    /// <param name="from">What that job is called in its folder.</param>
    /// <param name="other">The document whose rack they go on.</param>
    /// <returns>The document; or which material it does not have.</returns>
    public static Outcome<Project> Rack(IEnumerable<KeptOffcut> offcuts, Project job, string from, Project other) =>
        offcuts.Aggregate(
            (Outcome<Project>)other,
            (rack, offcut) =>
                rack.Then(racked =>
                    OtherThickness(offcut.Material, job, racked) is { } refusal
                        ? refusal
                        : racked.RackOffcut(
                            offcut.Material,
                            NameOf(offcut, from),
                            LengthText.Write(offcut.Length, job.Units),
                            LengthText.Write(offcut.Width, job.Units)
                        )
                )
        );

    /// <summary>One id may stand for two thicknesses in two jobs.</summary>
    private static Refusal? OtherThickness(string material, Project job, Project other)
    {
        var (here, there) = (Nominal(material, job), Nominal(material, other));
        return here is null || there is null || here == there
            ? null
            : new Refusal(
                $"\"{material}\" is {LengthText.Write(here.Value, job.Units)} thick where it was cut and "
                    + $"{LengthText.Write(there.Value, other.Units)} here: give one of the two another id.",
                $"shop/sheets/{material}/nominal"
            );
    }

    private static Length? Nominal(string material, Project job) =>
        job.Shop.Sheets.FirstOrDefault(good => good.Id == material) is { } good
        && LengthText.Read(good.Nominal.Text, job.Units).Take(out var nominal, out _)
            ? nominal
            : null;
}
