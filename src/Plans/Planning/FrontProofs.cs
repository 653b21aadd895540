using Nookwright.Bounds;
using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>What is proven about the plans of a front: by quick bounds, and by what was found out about the first of them.</summary>
/// <param name="bounds">The quick bounds.</param>
/// <param name="first">The proof of the first plan, or null.</param>
/// <param name="pinned">What the pinned sheets of a material cost.</param>
internal sealed class FrontProofs(WoodBounds bounds, PlanProof? first, Func<string, long> pinned)
{
    /// <summary>A cost of a material's sheets beside the pinned ones that no plan goes below.</summary>
    public long AtLeast(string material) =>
        Math.Max(
            bounds.AtLeast(material),
            Known(material) is { } known ? (long)(known.AtLeast * Unit(known)) - pinned(material) : 0
        );

    /// <summary>How far from the best a plan can be.</summary>
    public PlanProof Prove(Plan plan)
    {
        var proof = bounds.Prove(plan);
        return proof with { Materials = [.. proof.Materials.Select(Sharper)] };
    }

    private MaterialProof Sharper(MaterialProof quick) =>
        Known(quick.Material) is not { } known || known.AtLeast <= quick.AtLeast
            ? quick
            : known with
            {
                Sheets = quick.Sheets,
                Used = quick.Used,
                AtLeast = Math.Min(known.AtLeast, quick.Used),
                SheetsAtLeast = Math.Min(known.SheetsAtLeast, quick.Sheets),
            };

    private MaterialProof? Known(string material) => first?.Materials.FirstOrDefault(m => m.Material == material);

    // As costs of sheets are counted: ten-thousandths of the currency, or square millimetres.
    private static decimal Unit(MaterialProof proof) => proof.Measure == WoodMeasure.Money ? 10_000m : 1_000_000m;
}
