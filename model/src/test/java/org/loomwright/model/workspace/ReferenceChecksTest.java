package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each check has a fault of its own planted; nothing else may be complained about. */
class ReferenceChecksTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          # file | old | now | problem
          alder-van.json | "battery": "engine-bay" | "battery": "engine-bya" | battery: there is no place 'engine-bya'; did you mean 'engine-bay'?
          alder-van.json | "battery": "engine-bay" | "battery": "rear-stud" | battery: there is no place 'rear-stud'; 'rear-stud' is a ground stud, not a place
          alder-van.json | "batteryOpenings": ["bonnet"] | "batteryOpenings": ["bonnet", "bonet"] | batteryOpenings[1]: there is no opening 'bonet'; did you mean 'bonnet'?
          alder-van.json | "no", "words": "not prepared for towing", "share": "70 %" | "no", "words": "not prepared for towing" | traits[0].values: 1 of 2 values have a share; give one to all of them, or to none
          alder-van.json | "share": "70 %" | "share": "60 %" | traits[0].values: the shares add up to 90 %; they must add up to 100 %
          alder-van.json | "id": "tow-prep" | "id": "tow/prep" | traits[0].id: a trait's id has no '/': such names are kept for unknown facts; use '-' instead
          alder-van.json | "no": "slot F7 is empty" | "none": "slot F7 is empty" | traits[0].tell.expect: 'none' is not one of the values; they are yes, no
          alder-van.json | , "no": "slot F7 is empty" | | traits[0].tell.expect: it does not say what to expect for no; each value needs it
          alder-van.json | tow-prep = yes and rear-feed = no | tow-prep = yes and rear-feed = non | rules[0].exclude: trait 'rear-feed' has no value 'non'; did you mean 'no'?
          alder-van.json | "seats != none",%"recipe" | "unknown",%"recipe" | connectors[0].presentWhen: 'unknown' can't stand here, as nothing tells how to find out; write a condition on the traits
          alder-van.json | "metalWhen": "always" | "metalWhen": "unknown" | fuseBlocks[0].slots[0].metalWhen: the fact is unknown, so 'tell' must say how to find out; add it
          alder-van.json | {"yes": "two blades", "no": "an empty well"} | {"yes": "two blades", "no": "an empty well", "perhaps": "?"} | fuseBlocks[0].slots[1].tell.expect: 'perhaps' is not one of the values; they are yes, no
          alder-van.json | "behind": ["sill-trim"] | "behind": ["step-cover"] | openings[2].behind: the openings go in a circle, so none can be opened first: step-cover is behind step-cover
          alder-van.json | "tolerance": "50 mm" | "tolerance": "3 m" | runs[0].tolerance: the tolerance must be less than the length, which is "2.4 m"
          alder-van.json | {"cavity": "3" | {"cavity": "13" | connectors[0].cavities[1].cavity: housing 'HS-4' has no cavity '13'; its cavities are 1, 2, 3, 4
          alder-van.json | {"cavity": "3" | {"cavity": "4" | connectors[0].cavities[1].cavity: '4' is already used by connectors[0].cavities[0]; each needs its own
          alder-van.json | "id": "F9",%"section": "rear" | "id": "F9",%"section": "raer" | fuseBlocks[0].slots[1].section: there is no section 'raer'; did you mean 'rear'?
          alder-van.json | "baseLoad": "12 A" | "baseLoad": "12 A", "baseload": "1 A" | fuseBlocks[0].sections[0].baseload: 'baseload' is not a key of a section; keys not used yet are tell, feedResistance, fuse, fuseForm, evidence
          alder-van.json | "feed": "30",%"from" | "from" | circuits[0].feed: a supply or signal needs 'feed': a supply kind by DIN 72552 such as "30", or the name of the signal
          alder-van.json | "fuse": "15 A", | | circuits[0].fuse: a supply that can be spliced into needs the rating of its fuse
          alder-van.json | "load": "4 A", | | circuits[0].load: a circuit that can be spliced into needs the load that is on it already
          alder-van.json | slot rear-block F7 | slot rear-block F8 | circuits[0].from: there is no slot 'F8'; the slots are F7, F9
          alder-van.json | ground rear-stud | ground rear-connector | circuits[1].from: there is no ground stud 'rear-connector'; 'rear-connector' is a connector, not a ground stud
          alder-van.json | loose rear | loose raer | circuits[0].to[0]: there is no place 'raer'; did you mean 'rear'?
          alder-van.json | loose rear | lose rear | circuits[0].to[0]: 'lose rear' is no end of a wire; write 'cavity CONNECTOR NUMBER', 'slot BLOCK SLOT', 'ground STUD', 'unit NAME' or 'loose PLACE'
          alder-van.json | red/yellow | red/purple | circuits[0].colour: 'purple' is not a colour; use one of black, brown, red, orange, yellow, green, blue, violet, grey, white, pink, gold, turquoise, silver
          alder-van.json | measure-live | measure-life | traits[1].tell.how: 'measure-life' is not known here; did you mean 'measure-live'? The words are ask-owner, look, measure-live, measure-isolated
          alder-van.json | "lugs": 1 | "lugs": "1" | grounds[0].lugs: text stands here, but it must be a whole number
          alder-van.json | "lugs": 1 | "lugs": 5 | grounds[0]: lugs must be 0 or more and at most lugsMost; got 5 of 4
          alder-van.json | "lugs": 1 | "lugs": 1.5 | grounds[0].lugs: 1.5 can't stand here: a whole number, zero or more, must
          alder-van.json | "id": "rear-ground" | "id": "rear ground" | circuits[1].id: 'rear ground' can't be used as a name: it must start with a letter or digit, go on with letters, digits and - _ . / : and be no word of the conditions
          alder-van.json | "supplyLowest": "11.8 V" | "supplyLowest": "0 V" | supplyLowest: "0 V" can't be right: it must be more than zero
          alder-van.json | "restraintWait": "5 min" | "restraintWait": null | restraintWait: null says nothing; leave the key out, or write a time such as "90 s"
          alder-van.json | "name": "the bonnet" | "name": " " | openings[0].name: the text is empty; write something, or leave the key out if it may be
          cabin-fan.json | "cavity": "3" | "cavity": "7" | plugs[0].pins[2].cavity: housing 'HS-4' has no cavity '7'; its cavities are 1, 2, 3, 4
          cabin-fan.json | "peakTime": "300 ms", | | plugs[0].pins[0].need.peakTime: a peak needs its 'peakTime'
          cabin-fan.json | "peak": "14 A" | "peak": "4 A" | plugs[0].pins[0].need.continuous: "6.5 A" is more than 'peak', which is "4 A"
          cabin-fan.json | "duty": "80 %" | "duty": "180 %" | plugs[0].pins[0].need.duty: "180 %" can't be right: 100 % is always on
          cabin-fan.json | "main 1" | "main 9" | plugs[0].pins[2].need.shareWith[0]: there is no pin 'main 9'; a pin is written as PLUG PIN; did you mean 'main 1'?
          cabin-fan.json | "main 2" | "main 3" | plugs[0].pins[2].need.apartFrom[0]: 'main 3' is the pin itself; name another one
          cabin-fan.json | "ownFuse": true, | "ownFuse": true, "returnsBy": "main 9", | plugs[0].pins[0].need.returnsBy: there is no ground pin 'main 9'; a pin is written as PLUG PIN; did you mean 'main 2'?
          cabin-fan.json | "ownFuse": true, | "ownFuse": true, "returnsBy": "main 3", | plugs[0].pins[0].need.returnsBy: there is no ground pin 'main 3'; a pin is written as PLUG PIN; did you mean 'main 2'?
          cabin-fan.json | "ownFuse": true, | "ownFuse": true, "returnsBy": "rear-stud", | plugs[0].pins[0].need.returnsBy: there is no ground pin 'rear-stud'; a pin is written as PLUG PIN; the grounds are main 2
          cabin-fan.json | "continuous": "6.7 A" | "continuous": "6.7 A", "returnsBy": "main 2" | plugs[0].pins[1].need.returnsBy: a ground returns by itself; leave 'returnsBy' out here
          cabin-fan.json | "ownFuse": true, | "ownFuse": true, "draws": "wattage", | plugs[0].pins[0].need.draws: 'wattage' is not known here; the words are current, resistance, power
          cabin-fan.json | "metWhen": "seats = single" | "metWhen": "seat = single" | coding[0].metWhen: there is no trait 'seat'; did you mean 'seats'? (vehicle 'alder-van' of kit 'fan-kit')
          parts/bench-parts.json | "wireLeast": "0.5 mm²" | "wireLeast": "4 mm²" | terminals[0].wireLeast: "4 mm²" is more than 'wireMost', which is "2.5 mm²"
          parts/bench-parts.json | "price": "0.31 EUR" | "price": "0.31 USD" | wires[0].price: "0.31 USD" is in another currency than most prices, which are in EUR; use one currency
          parts/bench-parts.json | "spool": "100 m" | "spool": "0 m" | wires[0].spool: "0 m" can't be right: it must be more than zero
          parts/bench-parts.json | "id": "EC-4" | "id": "CP-28" | sundries[1].id: 'CP-28' is already used by sundries[0]; each needs its own
          parts/bench-parts.json | "use": "cavity-plug" | "use": "label" | housings[0].cavities[0].plug: 'CP-28' is not used as a cavity plug; its use is label
          alder-van.json | "supplyLowest": "11.8 V", | "supplyLowest": "11.8 V", "source": {"strong": "30 mΩ", "weak": "20 mΩ"}, | source.strong: "30 mΩ" is more than 'weak', which is "20 mΩ"
          alder-van.json | "supplyLowest": "11.8 V", | "supplyLowest": "11.8 V", "source": {"highest": "11.9 V"}, | source.highest: "11.9 V" is less than 'supply', which is "12 V"; the highest voltage with the engine running is at least that
          alder-van.json | "supplyLowest": "11.8 V", | "supplyLowest": "11.8 V", "source": {"weak": "0 Ω"}, | source.weak: "0 Ω" can't be right: it must be more than zero
          alder-van.json | "supplyLowest": "11.8 V", | "supplyLowest": "11.8 V", "source": {"weak": "14 V"}, | source.weak: "14 V" can't be read as a resistance: at character 4, V is a unit of voltage, not of resistance; expected µΩ, mΩ, Ω, kΩ or MΩ, such as "5 mΩ"
          alder-van.json | "baseLoad": "12 A" | "baseLoad": "12 A", "feedResistance": "0 mΩ" | fuseBlocks[0].sections[0].feedResistance: "0 mΩ" can't be right: it must be more than zero
          alder-van.json | "baseLoad": "12 A" | "baseLoad": "12 A", "fuse": "10 A" | fuseBlocks[0].sections[0].baseLoad: "12 A" is more than 'fuse', which is "10 A"
          alder-van.json | "baseLoad": "12 A" | "baseLoad": "12 A", "fuseForm": "bolt" | fuseBlocks[0].sections[0].fuse: a 'fuseForm' needs the rating of that fuse in 'fuse'
          alder-van.json | "fuse": "15 A", | "fuse": "15 A", "fuseForm": "blaed", | circuits[0].fuseForm: no fuse has the form 'blaed'; did you mean 'blade'?
          alder-van.json | "baseLoad": "6 A", | "baseLoad": "6 A", "resistance": "0 mΩ", | grounds[0].resistance: "0 mΩ" can't be right: it must be more than zero
          parts/bench-parts.json | "currentLimit": "25 A", | "currentLimit": "25 A", "currentLimits": [{"size": "4 mm²", "ambient": "60 °C", "current": "9 A"}], | terminals[0].currentLimits[0].size: the terminal does not take "4 mm²"; it takes "0.5 mm²" to "2.5 mm²"
          parts/bench-parts.json | "currentLimit": "25 A", | "currentLimit": "25 A", "currentLimits": [{"size": "1 mm²", "ambient": "60 °C", "current": "26 A"}], | terminals[0].currentLimits[0].current: "26 A" is more than 'currentLimit' of the terminal, which is "25 A"
          parts/bench-parts.json | "currentLimit": "25 A", | "currentLimit": "25 A", "currentLimits": [{"size": "1 mm²", "ambient": "60 °C", "current": "9 A"}, {"size": "1 mm²", "ambient": "140 °F", "current": "8 A"}], | terminals[0].currentLimits[1]: "1 mm²" at "140 °F" is already given by terminals[0].currentLimits[0]; each wire and ambient temperature stands once
          parts/bench-parts.json | "currentLimit": "25 A", | "currentLimit": "25 A", "currentLimits": [{"size": "1 mm²", "ambient": "60 °C", "current": "9 A"}, {"size": "1 mm²", "ambient": "80 °C", "current": "10 A"}], | terminals[0].currentLimits[1].current: "10 A" is more than "9 A" of terminals[0].currentLimits[0], but a thinner wire or a hotter place allows no more
          parts/bench-parts.json | "currentLimit": "25 A", | "currentLimit": "25 A", "currentLimits": [{"size": "1 mm²", "ambient": "60 °C", "current": "9 A"}, {"size": "2.5 mm²", "ambient": "60 °C", "current": "8 A"}], | terminals[0].currentLimits[0].current: "9 A" is more than "8 A" of terminals[0].currentLimits[1], but a thinner wire or a hotter place allows no more
          parts/bench-parts.json | "currentLimit": "25 A", | "currentLimit": "25 A", "contactResistance": "0 mΩ", | terminals[0].contactResistance: "0 mΩ" can't be right: it must be more than zero
          parts/bench-parts.json | "strip": "6 mm", | "strip": "6 mm", "insulationLeast": "4 mm", "insulationMost": "3 mm", | rings[0].insulationLeast: "4 mm" is more than 'insulationMost', which is "3 mm"
          parts/bench-parts.json | "strip": "6 mm", | "strip": "6 mm", "currentLimit": "0 A", | rings[0].currentLimit: "0 A" can't be right: it must be more than zero
          parts/bench-parts.json | "areaMost": "4 mm²", | "areaMost": "4 mm²", "resistance": "0 mΩ", | splices[0].resistance: "0 mΩ" can't be right: it must be more than zero
          parts/bench-parts.json | "rating": "10 A" | "rating": "10 A", "resistance": "0 mΩ" | fuses[0].resistance: "0 mΩ" can't be right: it must be more than zero
          parts/bench-parts.json | "bundleMost": "25 mm" | "bundleMost": "25 mm", "form": "conduit", "inner": "20 mm" | coverings[0].bundleMost: "25 mm" is more than 'inner', which is "20 mm"
          parts/bench-parts.json | "bundleMost": "25 mm" | "bundleMost": "25 mm", "form": "cloth-tape", "inner": "30 mm" | coverings[0].inner: only a conduit has an inner diameter of its own; write "form": "conduit", or leave the key out
          parts/bench-parts.json | "bundleMost": "25 mm" | "bundleMost": "25 mm", "form": "cloth tape" | coverings[0].form: 'cloth tape' is not known here; did you mean 'cloth-tape'? The words are tape, cloth-tape, sleeve, shrink-tube, conduit
          shop-rules.json | "revision": "2", | "revision": "2", "electrics": {"strongSource": {"value": "9 mΩ", "source": "x"}, "weakSource": {"value": "8 mΩ", "source": "x"}}, | electrics.strongSource: "9 mΩ" is more than 'weakSource', which is "8 mΩ"
          shop-rules.json | "revision": "2", | "revision": "2", "electrics": {"contact": {"value": "0 mΩ", "source": "x"}}, | electrics.contact.value: "0 mΩ" can't be right: it must be more than zero
          shop-rules.json | "revision": "2", | "revision": "2", "electrics": {"spliceBalance": {"value": "60 %", "source": "x"}}, | electrics.spliceBalance.value: "60 %" can't be right: the thinner side has 50 % at most
          shop-rules.json | "revision": "2", | "revision": "2", "electrics": {"fuseDrop": {"value": "150 mA", "source": "x"}}, | electrics.fuseDrop.value: "150 mA" can't be read as a voltage: at character 5, mA is a unit of current, not of voltage; expected V, mV or kV, such as "12.6 V"
          shop-rules.json | "10 mm" | "0 mm" | cutRounding.value: "0 mm" can't be right: it must be more than zero
          fan-kit.json | "connector": "rear-connector" | "connector": "rear-stud" | mounts[0].connector: there is no connector 'rear-stud'; 'rear-stud' is a ground stud, not a connector
          fan-kit.json | , "connector": "rear-connector" | | mounts[0]: a mount names either a connector or a place
          fan-kit.json | "parts": ["bench-parts"] | "parts": ["bench-part"] | parts[0]: there is no parts list 'bench-part'; did you mean 'bench-parts'?
          fan-kit.json | {"alder-van": "4" | {"alder-vna": "4" | designedAgainst: there is no document 'alder-vna'; did you mean 'alder-van'?
          """)
  void saysWhatIsWrong(String file, String old, String now, String problem) {
    assertThat(
            Small.workspace()
                .with(file, lines(old), now == null ? "" : lines(now))
                .problems()
                .stream()
                .limit(1))
        .containsExactly(file + ", " + problem);
  }

  /** A percent sign without space stands for a line break with its indent. */
  private static String lines(String text) {
    return text.replace(",%\"recipe\"", ",\n      \"recipe\"")
        .replace(",%\"section\"", ",\n          \"section\"")
        .replace(",%\"from\"", ",\n      \"from\"");
  }
}
