import { USUAL_JOINTS } from '../../../../../methods/current/runCheck/question.ts';
import type { AnswerName } from '../../../store/amps/runAnswers.ts';
import { answer, answers } from '../../../store/amps/running.ts';
import { typedNumber } from '../../../store/amps/typedNumber.ts';

/** How many joints of each kind lie in the run, and the milliohms of one. */
export function RunJoints() {
  const total = USUAL_JOINTS.reduce(
    (sum, _, i) => sum + (typedNumber(answers.value[`joint${i}` as AnswerName]) || 0),
    0,
  );
  return (
    <details>
      <summary>
        {total === 0 ? 'No joints' : total === 1 ? '1 joint' : `${total} joints`}, each with its milliohms
      </summary>
      <table class="small joints">
        <thead>
          <tr>
            <th scope="col">Joint</th>
            <th scope="col">How many</th>
            <th scope="col">mΩ each</th>
          </tr>
        </thead>
        <tbody>
          {USUAL_JOINTS.map(({ name, milliohms }, i) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>
                <Cell name={`joint${i}` as AnswerName} label={`How many: ${name}`} placeholder="0" />
              </td>
              <td>
                <Cell name={`ohms${i}` as AnswerName} label={`mΩ each: ${name}`} placeholder={String(milliohms)} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="note">The milliohms in grey are what is usually met, half as much either way; type yours over them.</p>
    </details>
  );
}

function Cell({ name, label, placeholder }: { name: AnswerName; label: string; placeholder: string }) {
  return (
    <input
      inputMode="decimal"
      autocomplete="off"
      aria-label={label}
      data-answer={name}
      placeholder={placeholder}
      value={answers.value[name]}
      onInput={(event) => answer({ [name]: event.currentTarget.value })}
    />
  );
}
