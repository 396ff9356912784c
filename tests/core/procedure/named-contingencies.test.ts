import { expect, it } from "vitest";
import { contingenciesNamedBy } from "../../../src/core/procedure/index.ts";
import { fileWith, procedureOf, step, task } from "../procedure-builder.ts";

const procedure = procedureOf(
  fileWith(
    [
      step("try", "ev1", 5, { do: "Try the bolt; if it sticks go to Bolt Stuck" }),
      step("warm", "ev1", 5, {
        alerts: [{ level: "caution", text: "See “Suit cold” when fingers go numb." }],
      }),
      step("plain", "ev1", 5),
    ],
    {
      contingencies: [
        { id: "stuck", title: "Bolt stuck", tasks: [task("s", [step("s1", "ev1", 1)])] },
        { id: "cold", title: "Suit cold", tasks: [task("c", [step("c1", "ev1", 1)])] },
      ],
    },
  ),
);

it("[OFF4] a step names the contingencies whose titles stand in its action or an alert", () => {
  const named = procedure.tasks[0]?.steps.map((one) =>
    contingenciesNamedBy(procedure, one).map(({ id }) => id),
  );
  expect(named).toEqual([["stuck"], ["cold"], []]);
});
