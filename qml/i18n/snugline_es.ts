<?xml version="1.0" encoding="utf-8"?>
<!-- SPDX-License-Identifier: Apache-2.0 -->
<!DOCTYPE TS>
<TS version="2.1" language="es_US" sourcelanguage="en">
<context>
    <name>AirPage</name>
    <message>
        <source>Air of %1</source>
        <translation>Aire de %1</translation>
    </message>
    <message>
        <source>This model has no air.</source>
        <translation>Este modelo no lleva aire.</translation>
    </message>
    <message>
        <source>Bladder</source>
        <translation>Vejiga</translation>
    </message>
    <message>
        <source>Hide the numbers</source>
        <translation>Ocultar los números</translation>
    </message>
    <message>
        <source>The numbers</source>
        <translation>Los números</translation>
    </message>
    <message>
        <source>Today&apos;s weather</source>
        <translation>El clima de hoy</translation>
    </message>
    <message>
        <source>%1, carried %2</source>
        <translation>%1, llevado a %2</translation>
    </message>
    <message>
        <source>Take a reading</source>
        <translation>Tomar una lectura</translation>
    </message>
    <message>
        <source>A reading through the needle lets out a little air; it is seen again for hold.</source>
        <translation>Una lectura con la aguja deja salir un poco de aire; después se vuelve a ver la sujeción.</translation>
    </message>
    <message>
        <source>Where is the helmet?</source>
        <translation>¿Dónde está el casco?</translation>
    </message>
    <message>
        <source>On the head</source>
        <translation>En la cabeza</translation>
    </message>
    <message>
        <source>Off the head</source>
        <translation>Fuera de la cabeza</translation>
    </message>
    <message>
        <source>What was done?</source>
        <translation>¿Qué se hizo?</translation>
    </message>
    <message>
        <source>Only read</source>
        <translation>Solo leer</translation>
    </message>
    <message>
        <source>Filled, then read</source>
        <translation>Llenar y luego leer</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Entendido</translation>
    </message>
    <message>
        <source>Typed, in %1</source>
        <translation>Escrito, en %1</translation>
    </message>
    <message>
        <source>Record what is typed</source>
        <translation>Registrar lo escrito</translation>
    </message>
    <message>
        <source>Record this reading</source>
        <translation>Registrar esta lectura</translation>
    </message>
    <message>
        <source>Say both above first</source>
        <translation>Primero indique las dos cosas de arriba</translation>
    </message>
    <message>
        <source>How the leak is worked out</source>
        <translation>Cómo se calcula la fuga</translation>
    </message>
</context>
<context>
    <name>AirWhy</name>
    <message>
        <source>%1 K</source>
        <translation>%1 K</translation>
    </message>
    <message>
        <source>%1 °R</source>
        <translation>%1 °R</translation>
    </message>
    <message>
        <source>Why: %1 air</source>
        <comment>of a bladder</comment>
        <translation>Por qué: %1 (aire)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>when, by what</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Read on the gauge</source>
        <translation>Leído en el manómetro</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Puesto a</translation>
    </message>
    <message>
        <source>Temperature then</source>
        <translation>Temperatura entonces</translation>
    </message>
    <message>
        <source>Air around it then, absolute</source>
        <translation>Aire alrededor entonces, absoluto</translation>
    </message>
    <message>
        <source>Never measured; the sheet starts at</source>
        <translation>Nunca medido; la ficha empieza en</translation>
    </message>
    <message>
        <source>What it was</source>
        <translation>Cómo estaba</translation>
    </message>
    <message>
        <source>Seen in the line</source>
        <translation>Visto en la fila</translation>
    </message>
    <message>
        <source>Marks seen</source>
        <translation>Marcas vistas</translation>
    </message>
    <message>
        <source>Its air then, worked out</source>
        <translation>Su aire entonces, calculado</translation>
    </message>
    <message>
        <source>As a bladder that keeps its room.</source>
        <translation>Como una vejiga que conserva su espacio.</translation>
    </message>
    <message>
        <source>When the marks were last seen</source>
        <translation>Cuando se vieron las marcas por última vez</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Air around it, absolute</source>
        <translation>Aire alrededor, absoluto</translation>
    </message>
    <message>
        <source>By the barometer of this device.</source>
        <translation>Según el barómetro de este dispositivo.</translation>
    </message>
    <message>
        <source>By the elevation, %1, in a standard atmosphere (US Standard Atmosphere 1976).</source>
        <translation>Según la altitud, %1, en una atmósfera estándar (US Standard Atmosphere 1976).</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>No weather was noted when its air was set, so that nothing can be worked out.</source>
        <translation>No se anotó el clima cuando se puso el aire, así que no se puede calcular nada.</translation>
    </message>
    <message>
        <source>Weather is not noted, so that nothing can be worked out.</source>
        <translation>El clima no está anotado, así que no se puede calcular nada.</translation>
    </message>
    <message>
        <source>(%1 + %2) × %3 / %4 − %5</source>
        <comment>gauge, ambient then, kelvin now, kelvin then, ambient now</comment>
        <translation>(%1 + %2) × %3 / %4 − %5</translation>
    </message>
    <message>
        <source>If the bladder keeps its room</source>
        <translation>Si la vejiga conserva su espacio</translation>
    </message>
    <message>
        <source>%1. Below zero: no air is left to hold it.</source>
        <translation>%1. Bajo cero: no queda aire que lo sostenga.</translation>
    </message>
    <message>
        <source>If it gives way and keeps its pressure</source>
        <translation>Si cede y conserva su presión</translation>
    </message>
    <message>
        <source>%1 % of its room</source>
        <translation>%1 % de su espacio</translation>
    </message>
    <message>
        <source>%1 / %2 × (%3 + %4) / (%3 + %5)</source>
        <comment>kelvin now, kelvin then, gauge, ambient then, ambient now</comment>
        <translation>%1 / %2 × (%3 + %4) / (%3 + %5)</translation>
    </message>
    <message>
        <source>Two bounds. The truth lies between them.</source>
        <translation>Dos límites. La verdad está entre ellos.</translation>
    </message>
    <message>
        <source>Moved since</source>
        <translation>Cambio desde entonces</translation>
    </message>
    <message>
        <source>%1 by the temperature, %2 by the elevation</source>
        <translation>%1 por la temperatura, %2 por la altitud</translation>
    </message>
    <message>
        <source>The model sheet allows</source>
        <translation>La ficha del modelo permite</translation>
    </message>
    <message>
        <source>Moved more than that.</source>
        <translation>Cambió más que eso.</translation>
    </message>
    <message>
        <source>Within that.</source>
        <translation>Dentro de eso.</translation>
    </message>
    <message>
        <source>Band of the sheet</source>
        <translation>Margen de la ficha</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Never measured: only the move is judged.</source>
        <translation>Nunca medido: solo se juzga el cambio.</translation>
    </message>
    <message>
        <source>The first bound has left it.</source>
        <translation>El primer límite lo rebasó.</translation>
    </message>
    <message>
        <source>The first bound has not left it.</source>
        <translation>El primer límite no lo rebasó.</translation>
    </message>
    <message>
        <source>%1: no air left to hold it at %2</source>
        <translation>%1: no queda aire que lo sostenga a %2</translation>
    </message>
    <message>
        <source>%1 air %2 down at %3</source>
        <translation>%1: %2 de aire menos a %3</translation>
    </message>
    <message>
        <source>%1 air %2 up at %3</source>
        <translation>%1: %2 de aire más a %3</translation>
    </message>
    <message>
        <source>Bring the helmet to room temperature before changing its air. Air changed in the cold is seen again warm.</source>
        <translation>Lleve el casco a temperatura ambiente antes de cambiar su aire. El aire cambiado en frío se vuelve a ver en tibio.</translation>
    </message>
    <message>
        <source>(%1 + %2) × %3 / %4 − %5</source>
        <comment>gauge, ambient, kelvin of 20 C, kelvin then, one standard atmosphere</comment>
        <translation>(%1 + %2) × %3 / %4 − %5</translation>
    </message>
    <message>
        <source>Left out: older than one before it</source>
        <translation>Excluida: más antigua que una anterior</translation>
    </message>
    <message>
        <source>Left out: older than the last filling</source>
        <translation>Excluida: más antigua que el último inflado</translation>
    </message>
    <message>
        <source>Left out: no weather was noted with it</source>
        <translation>Excluida: no se anotó el clima con ella</translation>
    </message>
    <message>
        <source>Left out: alone since a filling</source>
        <translation>Excluida: única desde un inflado</translation>
    </message>
    <message>
        <source>Left out: too long ago</source>
        <translation>Excluida: hace demasiado tiempo</translation>
    </message>
    <message>
        <source>Filled or let out just before: a new run begins here</source>
        <translation>Inflada o desinflada justo antes: aquí empieza una serie nueva</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a day, a pressure</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Each reading, carried to 20 °C at sea level</source>
        <translation>Cada lectura, llevada a 20 °C al nivel del mar</translation>
    </message>
    <message>
        <source>Each reading, carried to 68 °F at sea level</source>
        <translation>Cada lectura, llevada a 68 °F al nivel del mar</translation>
    </message>
    <message>
        <source>The middle one of the slopes of all %1 pairs (Theil 1950, Sen 1968).</source>
        <translation>La pendiente central de los %1 pares (Theil 1950, Sen 1968).</translation>
    </message>
    <message>
        <source>The middle one of the slopes of all %1 pairs within %2 runs (Theil 1950, Sen 1968).</source>
        <translation>La pendiente central de los %1 pares dentro de %2 series (Theil 1950, Sen 1968).</translation>
    </message>
    <message>
        <source>A week</source>
        <translation>Por semana</translation>
    </message>
    <message>
        <source>95 % interval</source>
        <translation>Intervalo del 95 %</translation>
    </message>
    <message>
        <source>By the ranks of the slopes (Sen 1968).</source>
        <translation>Por los rangos de las pendientes (Sen 1968).</translation>
    </message>
    <message>
        <source>The slope</source>
        <translation>La pendiente</translation>
    </message>
    <message>
        <source>Loss that is allowed in a week</source>
        <translation>Pérdida permitida por semana</translation>
    </message>
    <message>
        <source>Nothing is called a leak without an interval.</source>
        <translation>Sin intervalo no se habla de fuga.</translation>
    </message>
    <message>
        <source>All of the interval loses more than that.</source>
        <translation>Todo el intervalo pierde más que eso.</translation>
    </message>
    <message>
        <source>Not all of the interval loses more than that.</source>
        <translation>No todo el intervalo pierde más que eso.</translation>
    </message>
    <message>
        <source>No model sheet</source>
        <translation>Sin ficha de modelo</translation>
    </message>
    <message>
        <source>Fill it, see the marks again, and look at the valve and the bladder. What goes on losing air needs a repair by the maker&apos;s instructions.</source>
        <translation>Ínflela, vea de nuevo las marcas y revise la válvula y la vejiga. Lo que sigue perdiendo aire necesita reparación según las instrucciones del fabricante.</translation>
    </message>
</context>
<context>
    <name>AirWords</name>
    <message>
        <source>Helmet</source>
        <translation>Casco</translation>
    </message>
    <message numerus="yes">
        <source>%1 air (and %n more)</source>
        <comment>a bladder; so many others too</comment>
        <translation>
            <numerusform>%1 (aire) y %n más</numerusform>
            <numerusform>%1 (aire) y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 air</source>
        <comment>of a bladder</comment>
        <translation>%1 (aire)</translation>
    </message>
    <message>
        <source> at %1</source>
        <comment>a temperature</comment>
        <translation> a %1</translation>
    </message>
    <message>
        <source> up here</source>
        <translation> a esta altitud</translation>
    </message>
    <message>
        <source> at %1</source>
        <comment>an elevation</comment>
        <translation> a %1</translation>
    </message>
    <message>
        <source> in this weather</source>
        <translation> con este clima</translation>
    </message>
    <message>
        <source> at %1 and %2</source>
        <comment>temperature, elevation</comment>
        <translation> a %1 y %2</translation>
    </message>
    <message>
        <source>less than 1 kPa</source>
        <translation>menos de 1 kPa</translation>
    </message>
    <message>
        <source>about %1 kPa</source>
        <translation>unos %1 kPa</translation>
    </message>
    <message>
        <source>less than 0.1 psi</source>
        <translation>menos de 0.1 psi</translation>
    </message>
    <message>
        <source>about %1 psi</source>
        <translation>unos %1 psi</translation>
    </message>
    <message>
        <source>Indoors</source>
        <translation>Adentro</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>Afuera</translation>
    </message>
    <message>
        <source>In the truck</source>
        <translation>En el camión</translation>
    </message>
    <message>
        <source>noted %1</source>
        <comment>a time</comment>
        <translation>anotado a las %1</translation>
    </message>
    <message>
        <source>noted yesterday</source>
        <translation>anotado ayer</translation>
    </message>
    <message>
        <source>noted %1</source>
        <comment>a day</comment>
        <translation>anotado el %1</translation>
    </message>
    <message>
        <source>%1 was filled and nobody has seen the marks since</source>
        <translation>%1: se llenó y nadie ha visto las marcas desde entonces</translation>
    </message>
    <message>
        <source>%1: no air left to hold it%2</source>
        <comment>a bladder; at what temperature</comment>
        <translation>%1: no queda aire que lo sostenga%2</translation>
    </message>
    <message>
        <source>%1 has moved%2</source>
        <translation>%1: cambió%2</translation>
    </message>
    <message>
        <source>%1 %2 down%3</source>
        <comment>a bladder; about so much; at what temperature</comment>
        <translation>%1: %2 menos%3</translation>
    </message>
    <message>
        <source>%1 %2 up%3</source>
        <comment>a bladder; about so much; at what temperature</comment>
        <translation>%1: %2 más%3</translation>
    </message>
    <message>
        <source>, never measured</source>
        <translation>, nunca medido</translation>
    </message>
    <message>
        <source>%1 leaks</source>
        <translation>%1: pierde aire</translation>
    </message>
    <message numerus="yes">
        <source>%1 air leaks %2 a week, from %n readings</source>
        <comment>a bladder; about so much</comment>
        <translation>
            <numerusform>%1 (aire): pierde %2 por semana, según %n lectura</numerusform>
            <numerusform>%1 (aire): pierde %2 por semana, según %n lecturas</numerusform>
        </translation>
    </message>
    <message>
        <source>Seen off in the line</source>
        <translation>Visto mal en la fila</translation>
    </message>
    <message>
        <source>Seen in the line: %1</source>
        <translation>Visto en la fila: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n readings: too few to speak of a leak. Five in a row between two refills are needed.</source>
        <translation>
            <numerusform>%n lectura: muy pocas para hablar de una fuga. Hacen falta cinco seguidas entre dos llenados.</numerusform>
            <numerusform>%n lecturas: muy pocas para hablar de una fuga. Hacen falta cinco seguidas entre dos llenados.</numerusform>
        </translation>
    </message>
    <message>
        <source>Loses %1 a week</source>
        <translation>Pierde %1 por semana</translation>
    </message>
    <message>
        <source>Gains %1 a week</source>
        <translation>Gana %1 por semana</translation>
    </message>
    <message>
        <source>Leaks. %1, %2. The sheet allows %3.</source>
        <translation>Tiene fuga. %1, %2. La ficha permite %3.</translation>
    </message>
    <message>
        <source>No leak shown. %1, %2. The sheet allows %3.</source>
        <translation>No se ve fuga. %1, %2. La ficha permite %3.</translation>
    </message>
    <message numerus="yes">
        <source>About %n pump(s)</source>
        <translation>
            <numerusform>Cerca de %n bombeo</numerusform>
            <numerusform>Cerca de %n bombeos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, likely %2 to %3</source>
        <translation>%1, probablemente de %2 a %3</translation>
    </message>
    <message>
        <source>%1, perhaps many more</source>
        <translation>%1, quizá muchos más</translation>
    </message>
    <message>
        <source>%1: a guess, nothing was learned with this model yet</source>
        <translation>%1: una suposición, aún no se ha aprendido nada de este modelo</translation>
    </message>
    <message numerus="yes">
        <source>%1: learned from %n step(s) with this model</source>
        <translation>
            <numerusform>%1: aprendido de %n paso con este modelo</numerusform>
            <numerusform>%1: aprendido de %n pasos con este modelo</numerusform>
        </translation>
    </message>
    <message>
        <source>One pump does %1, give or take %2</source>
        <translation>Un bombeo cambia %1, más o menos %2</translation>
    </message>
    <message>
        <source>typed</source>
        <translation>escrito</translation>
    </message>
    <message>
        <source>by gauge %1</source>
        <translation>con el manómetro %1</translation>
    </message>
    <message>
        <source>Air where helmets are lies between %1 and %2. Look at the figure again.</source>
        <translation>El aire donde hay cascos está entre %1 y %2. Vuelva a mirar la cifra.</translation>
    </message>
    <message>
        <source>Elevations go from %1 to %2. Look at the figure again.</source>
        <translation>Las altitudes van de %1 a %2. Vuelva a mirar la cifra.</translation>
    </message>
    <message>
        <source>A bladder&apos;s gauge reads between %1 and %2. Look at the figure again.</source>
        <translation>El manómetro de una vejiga marca entre %1 y %2. Vuelva a mirar la cifra.</translation>
    </message>
    <message>
        <source>That is not a temperature. Write it as %1.</source>
        <translation>Eso no es una temperatura. Escríbala como %1.</translation>
    </message>
    <message>
        <source>That is not an elevation. Write it as %1.</source>
        <translation>Eso no es una altitud. Escríbala como %1.</translation>
    </message>
    <message>
        <source>That is not a gauge pressure. Write it as %1.</source>
        <translation>Eso no es una presión manométrica. Escríbala como %1.</translation>
    </message>
    <message>
        <source>This reading would be older than the last refill. Look at the clock of this device, or leave it.</source>
        <translation>Esta lectura sería anterior al último llenado. Revise el reloj de este dispositivo, o déjela.</translation>
    </message>
    <message>
        <source>This reading would be older than the last one. Look at the clock of this device, or leave it.</source>
        <translation>Esta lectura sería anterior a la última. Revise el reloj de este dispositivo, o déjela.</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>entre %1 y %2</translation>
    </message>
    <message>
        <source>between %1 lost and %2 gained</source>
        <translation>entre %1 perdidos y %2 ganados</translation>
    </message>
    <message numerus="yes">
        <source>%1 with 95 % confidence, from %n readings</source>
        <comment>between what and what</comment>
        <translation>
            <numerusform>%1 con 95 % de confianza, según %n lectura</numerusform>
            <numerusform>%1 con 95 % de confianza, según %n lecturas</numerusform>
        </translation>
    </message>
    <message>
        <source>Fitted in the cold: %1</source>
        <translation>Ajustado en frío: %1</translation>
    </message>
</context>
<context>
    <name>AnswerWords</name>
    <message>
        <source>Hair wet</source>
        <translation>Cabello mojado</translation>
    </message>
    <message>
        <source>Hair dry</source>
        <translation>Cabello seco</translation>
    </message>
    <message>
        <source>Starting air set</source>
        <translation>Aire inicial puesto</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a mark, its answer</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Brow gap %1</source>
        <translation>Altura sobre las cejas %1</translation>
    </message>
    <message>
        <source>%1: all snug</source>
        <translation>%1: todo bien ajustado</translation>
    </message>
    <message>
        <source>Air into the %1</source>
        <comment>a place</comment>
        <translation>Aire puesto en la %1</translation>
    </message>
    <message>
        <source>Air out of the %1</source>
        <comment>a place</comment>
        <translation>Aire sacado de la %1</translation>
    </message>
    <message>
        <source>Swapped: %1</source>
        <translation>Se cambió: %1</translation>
    </message>
    <message>
        <source>Straps rerouted</source>
        <translation>Correas pasadas de nuevo</translation>
    </message>
    <message>
        <source>Straps set to length</source>
        <translation>Correas puestas a la medida</translation>
    </message>
    <message>
        <source>Gauge read at the %1</source>
        <translation>Manómetro leído en la %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a point, how it was seen</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>All seven points sound</source>
        <translation>Los siete puntos en buen estado</translation>
    </message>
    <message>
        <source>Answered yes</source>
        <translation>Se respondió que sí</translation>
    </message>
    <message>
        <source>Answered no</source>
        <translation>Se respondió que no</translation>
    </message>
    <message>
        <source>Athlete says: %1</source>
        <translation>La persona dice: %1</translation>
    </message>
    <message>
        <source>Athlete&apos;s word noted</source>
        <translation>Palabra de la persona anotada</translation>
    </message>
    <message>
        <source>Athletic trainer called</source>
        <translation>Se avisó al entrenador atlético o a la entrenadora atlética (athletic trainer)</translation>
    </message>
    <message>
        <source>The helmet is cold</source>
        <translation>El casco está frío</translation>
    </message>
    <message>
        <source>The helmet is warm</source>
        <translation>El casco está tibio</translation>
    </message>
    <message>
        <source>Pads chosen</source>
        <translation>Almohadillas elegidas</translation>
    </message>
    <message>
        <source>Fitted as it is</source>
        <translation>Puesto tal como está</translation>
    </message>
</context>
<context>
    <name>Athlete</name>
    <message>
        <source>Why? The arithmetic</source>
        <translation>¿Por qué? El cálculo</translation>
    </message>
    <message>
        <source>Timeline</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Whole record, to show or hand out</source>
        <translation>Registro completo, para mostrar o entregar</translation>
    </message>
    <message>
        <source>Do not wear</source>
        <translation>No usar</translation>
    </message>
</context>
<context>
    <name>AthleteForm</name>
    <message>
        <source>Add an athlete</source>
        <translation>Agregar atleta</translation>
    </message>
    <message>
        <source>Change an athlete</source>
        <translation>Cambiar atleta</translation>
    </message>
    <message>
        <source>Jersey number, as written</source>
        <translation>Número de camiseta, como está escrito</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Apellido</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Birth year, if known</source>
        <translation>Año de nacimiento, si se sabe</translation>
    </message>
    <message>
        <source>On the roster</source>
        <translation>En el plantel</translation>
    </message>
    <message>
        <source>Off the roster</source>
        <translation>Fuera del plantel</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Phone of their own</source>
        <translation>Teléfono propio</translation>
    </message>
    <message>
        <source>A code that joins it to this athlete only</source>
        <translation>Un código que lo une solo a esta persona</translation>
    </message>
</context>
<context>
    <name>AthletesPage</name>
    <message>
        <source>Athletes</source>
        <translation>Atletas</translation>
    </message>
    <message>
        <source>%1 in the Book</source>
        <translation>%1 en el Libro</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Nobody is in the Book yet. Take a roster in, or add one athlete.</source>
        <translation>Aún no hay nadie en el Libro. Cargue un plantel o agregue atletas uno por uno.</translation>
    </message>
    <message>
        <source>Nobody matches.</source>
        <translation>Nadie coincide.</translation>
    </message>
    <message>
        <source>Add an athlete</source>
        <translation>Agregar atleta</translation>
    </message>
    <message>
        <source>Take a roster in</source>
        <translation>Cargar un plantel</translation>
    </message>
    <message>
        <source>Jersey or name</source>
        <translation>Camiseta o nombre</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Off the roster</source>
        <translation>Fuera del plantel</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Cambiar %1</translation>
    </message>
    <message>
        <source>Show everybody</source>
        <translation>Mostrar a todas las personas</translation>
    </message>
    <message>
        <source>Show only these</source>
        <translation>Mostrar solo estas</translation>
    </message>
    <message>
        <source>Warning not signed</source>
        <translation>Advertencia sin firmar</translation>
    </message>
</context>
<context>
    <name>BookIndex</name>
    <message>
        <source>Book</source>
        <translation>Libro</translation>
    </message>
    <message>
        <source>Athletes</source>
        <translation>Atletas</translation>
    </message>
    <message>
        <source>%1 in the Book</source>
        <translation>%1 en el Libro</translation>
    </message>
    <message>
        <source>Helmets</source>
        <translation>Cascos</translation>
    </message>
    <message>
        <source>%1 in service</source>
        <translation>%1 en servicio</translation>
    </message>
    <message>
        <source>%1 on hold, %2 with a label that lapses</source>
        <translation>%1 retenidos, %2 con una etiqueta por vencer</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>Model sheets</source>
        <translation>Fichas de modelo</translation>
    </message>
    <message>
        <source>%1 adopted</source>
        <translation>%1 adoptadas</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Inches, psi, °F</source>
        <translation>Pulgadas, psi, °F</translation>
    </message>
    <message>
        <source>Millimetres, kPa, °C</source>
        <translation>Milímetros, kPa, °C</translation>
    </message>
    <message>
        <source>Sharing</source>
        <translation>Compartir</translation>
    </message>
</context>
<context>
    <name>ChipGrid</name>
    <message>
        <source>%1, chosen</source>
        <translation>%1, elegido</translation>
    </message>
</context>
<context>
    <name>Code</name>
    <message>
        <source>The same code again</source>
        <translation>El mismo código otra vez</translation>
    </message>
    <message>
        <source>New code</source>
        <translation>Código nuevo</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>%1: %2 to %3 digits</source>
        <translation>%1: de %2 a %3 dígitos</translation>
    </message>
    <message>
        <source>Set this code</source>
        <translation>Poner este código</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Take over</source>
        <translation>Tomar el turno</translation>
    </message>
    <message>
        <source>With a code set, Snugline locks when nobody touches it, and athletes cannot leave Say. Nobody can read a code again: keep it where only you find it.</source>
        <translation>Con un código puesto, Snugline se bloquea cuando nadie lo toca, y los atletas no pueden salir de Dilo. Nadie puede volver a leer un código: guárdelo donde solo usted lo encuentre.</translation>
    </message>
</context>
<context>
    <name>CollectAsked</name>
    <message>
        <source>It seems to have sent: %1</source>
        <translation>Parece que envió: %1</translation>
    </message>
    <message>
        <source>Read it as that</source>
        <translation>Leerlo así</translation>
    </message>
    <message>
        <source>It is ours: take it in, on hold</source>
        <translation>Es nuestro: recibirlo, retenido</translation>
    </message>
    <message>
        <source>It is back: hand it in</source>
        <translation>Ya volvió: entregarlo</translation>
    </message>
    <message>
        <source>Put aside, nothing is written</source>
        <translation>Poner aparte, no se escribe nada</translation>
    </message>
</context>
<context>
    <name>CollectPage</name>
    <message>
        <source>Handing in</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Put it on hold</source>
        <translation>Retenerlo</translation>
    </message>
    <message>
        <source>Its page</source>
        <translation>Su página</translation>
    </message>
    <message>
        <source>By jersey number</source>
        <translation>Por número de camiseta</translation>
    </message>
    <message>
        <source>Where a tag cannot be read</source>
        <translation>Cuando una placa no se puede leer</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Faltan</translation>
    </message>
    <message>
        <source>Before that</source>
        <translation>Antes de ese</translation>
    </message>
    <message>
        <source>In no Book and put aside: %1</source>
        <translation>En ningún Libro y puestos aparte: %1</translation>
    </message>
    <message>
        <source>Jersey number</source>
        <translation>Número de camiseta</translation>
    </message>
    <message>
        <source>Nobody of that number has a helmet.</source>
        <translation>Nadie con ese número tiene casco.</translation>
    </message>
</context>
<context>
    <name>Dock</name>
    <message>
        <source>%1, size %2</source>
        <translation>%1, talla %2</translation>
    </message>
    <message>
        <source>Label looked for and missing</source>
        <translation>Se buscó la etiqueta y falta</translation>
    </message>
    <message>
        <source>%1, size %2, %3</source>
        <translation>%1, talla %2, %3</translation>
    </message>
    <message>
        <source>On hold: %1</source>
        <translation>Retenido: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>None of the seven points seen yet</source>
        <translation>Aún no se ve ninguno de los siete puntos</translation>
    </message>
    <message>
        <source>Not seen yet: %1</source>
        <translation>Aún sin ver: %1</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between faults</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>See the seven points first</source>
        <translation>Vea primero los siete puntos</translation>
    </message>
    <message>
        <source>To go in service, see first: %1</source>
        <translation>Para entrar en servicio, vea primero: %1</translation>
    </message>
    <message>
        <source>Label cannot be read. It goes on hold until one is read</source>
        <translation>La etiqueta no se puede leer. Queda retenido hasta que se lea una</translation>
    </message>
    <message>
        <source>It was still with the athlete</source>
        <translation>Aún lo tenía un atleta o una atleta</translation>
    </message>
</context>
<context>
    <name>DockAnswers</name>
    <message>
        <source>Hold</source>
        <translation>Retener</translation>
    </message>
    <message>
        <source>In service</source>
        <translation>En servicio</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) not checked</source>
        <translation>
            <numerusform>%n punto sin revisar</numerusform>
            <numerusform>%n puntos sin revisar</numerusform>
        </translation>
    </message>
    <message>
        <source>All seven sound, in service</source>
        <translation>Los siete en buen estado, en servicio</translation>
    </message>
    <message>
        <source>Saves all seven as checked</source>
        <translation>Guarda los siete como revisados</translation>
    </message>
</context>
<context>
    <name>DockAsked</name>
    <message>
        <source>None of them: it is new here</source>
        <translation>Ninguno de ellos: es nuevo aquí</translation>
    </message>
    <message>
        <source>Put aside, nothing is written</source>
        <translation>Puesto a un lado, no se escribe nada</translation>
    </message>
</context>
<context>
    <name>DockCamera</name>
    <message>
        <source>Scan with the camera</source>
        <translation>Escanear con la cámara</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>Camera off</source>
        <translation>Apagar la cámara</translation>
    </message>
</context>
<context>
    <name>DockLabels</name>
    <message>
        <source>Labels for helmets without a tag</source>
        <translation>Etiquetas para cascos sin placa</translation>
    </message>
    <message>
        <source>Labels to print</source>
        <translation>Etiquetas para imprimir</translation>
    </message>
    <message>
        <source>Each label has a serial of our own, as a code and in letters, and is given only once. Print it, stick it on the shell, scan it.</source>
        <translation>Cada etiqueta lleva una serie nuestra, como código y en letras, y se da una sola vez. Imprímala, péguela en la carcasa y escanéela.</translation>
    </message>
    <message>
        <source>The next one is %1</source>
        <translation>La siguiente es %1</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántas</translation>
    </message>
</context>
<context>
    <name>DockNfc</name>
    <message>
        <source>Scan by NFC</source>
        <translation>Escanear por NFC</translation>
    </message>
    <message>
        <source>NFC off</source>
        <translation>Apagar NFC</translation>
    </message>
</context>
<context>
    <name>DockPoints</name>
    <message>
        <source>All seven sound</source>
        <translation>Los siete en buen estado</translation>
    </message>
    <message>
        <source>%1: what is wrong?</source>
        <translation>%1: ¿qué tiene?</translation>
    </message>
    <message>
        <source>Without words</source>
        <translation>Sin palabras</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>Con sus propias palabras</translation>
    </message>
    <message>
        <source>Note this fault</source>
        <translation>Anotar esta falla</translation>
    </message>
</context>
<context>
    <name>DockScreen</name>
    <message>
        <source>Dock</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Nothing taken in today yet</source>
        <translation>Hoy aún no se recibe nada</translation>
    </message>
    <message>
        <source>Today %1: %2 in service, %3 on hold</source>
        <translation>Hoy %1: %2 en servicio, %3 retenidos</translation>
    </message>
    <message>
        <source>The helmet on the table with its seven points</source>
        <translation>El casco sobre la mesa con sus siete puntos</translation>
    </message>
    <message>
        <source>A helmet with its seven points</source>
        <translation>Un casco con sus siete puntos</translation>
    </message>
    <message>
        <source>A hand scanner types for you. A known unit shows what is due on it; a new one is taken in.</source>
        <translation>Un lector de mano escribe por usted. Un casco conocido muestra lo que tiene pendiente; uno nuevo se recibe.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>It seems to have sent: %1</source>
        <translation>Parece que envió: %1</translation>
    </message>
    <message>
        <source>Read it as that</source>
        <translation>Leerlo así</translation>
    </message>
    <message>
        <source>Add a photo of it</source>
        <translation>Agregar una foto</translation>
    </message>
    <message>
        <source>Add a photo of %1</source>
        <translation>Agregar una foto de %1</translation>
    </message>
    <message>
        <source>This device does not read NFC tags.</source>
        <translation>Este dispositivo no lee placas NFC.</translation>
    </message>
    <message>
        <source>%1 unfinished</source>
        <translation>%1 sin terminar</translation>
    </message>
    <message>
        <source>It really reads %1</source>
        <translation>De verdad dice %1</translation>
    </message>
    <message>
        <source>It stands as away for repair or recertification.</source>
        <translation>Consta como fuera, en reparación o recertificación.</translation>
    </message>
    <message>
        <source>It is back: say what was done</source>
        <translation>Ya volvió: decir qué se hizo</translation>
    </message>
</context>
<context>
    <name>DockUnit</name>
    <message>
        <source>New here: %1</source>
        <translation>Nuevo aquí: %1</translation>
    </message>
    <message>
        <source>New here</source>
        <translation>Nuevo aquí</translation>
    </message>
    <message>
        <source>Nothing else is due on it</source>
        <translation>No tiene nada más pendiente</translation>
    </message>
    <message>
        <source>Put aside, nothing is written</source>
        <translation>Puesto a un lado, no se escribe nada</translation>
    </message>
    <message>
        <source>Open the page of this helmet</source>
        <translation>Abrir la página de este casco</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Read the label again</source>
        <translation>Leer la etiqueta otra vez</translation>
    </message>
    <message>
        <source>Change sheet, size or label</source>
        <translation>Cambiar ficha, talla o etiqueta</translation>
    </message>
</context>
<context>
    <name>DockWhat</name>
    <message>
        <source>No model sheet is adopted yet. Adopt one under Book, Helmets, Model sheets.</source>
        <translation>Aún no hay fichas de modelo. Adopte una en Libro, Cascos, Fichas de modelo.</translation>
    </message>
    <message>
        <source>Model sheet</source>
        <translation>Ficha de modelo</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Talla</translation>
    </message>
    <message>
        <source>On to the seven points</source>
        <translation>Ir a los siete puntos</translation>
    </message>
    <message>
        <source>As %1</source>
        <translation>Igual que %1</translation>
    </message>
    <message>
        <source>%1. Its points are still to be checked.</source>
        <translation>%1. Falta revisar sus puntos.</translation>
    </message>
    <message>
        <source>Size, once the model sheet is chosen</source>
        <translation>Talla, cuando se elija la ficha de modelo</translation>
    </message>
</context>
<context>
    <name>Doors</name>
    <message>
        <source>Line</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Say</source>
        <translation>Dilo</translation>
    </message>
    <message>
        <source>Dock</source>
        <translation>Recepción</translation>
    </message>
    <message>
        <source>Book</source>
        <translation>Libro</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Your own phone? Join as an athlete</source>
        <translation>¿Tu propio teléfono? Únete como atleta</translation>
    </message>
</context>
<context>
    <name>DueWords</name>
    <message>
        <source>Do not wear</source>
        <translation>No usar</translation>
    </message>
    <message>
        <source>See before practice</source>
        <translation>Ver antes de la práctica</translation>
    </message>
    <message>
        <source>Weekly look</source>
        <translation>Vistazo semanal</translation>
    </message>
    <message>
        <source>Nothing due</source>
        <translation>Nada pendiente</translation>
    </message>
    <message>
        <source>No helmet is out of use.</source>
        <translation>Ningún casco está fuera de uso.</translation>
    </message>
    <message>
        <source>Nobody to see before practice.</source>
        <translation>Nadie por ver antes de la práctica.</translation>
    </message>
    <message>
        <source>No weekly look is due.</source>
        <translation>No toca ningún vistazo semanal.</translation>
    </message>
    <message>
        <source>Everybody has something due.</source>
        <translation>Cada atleta tiene algo pendiente.</translation>
    </message>
    <message>
        <source>First fit</source>
        <translation>Primer ajuste</translation>
    </message>
    <message>
        <source>Refit</source>
        <translation>Nuevo ajuste</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Vistazo</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Held.</source>
        <translation>Retenido.</translation>
    </message>
    <message>
        <source>Held %1.</source>
        <translation>Retenido %1.</translation>
    </message>
    <message>
        <source>Held %1 by %2</source>
        <translation>Retenido %1 por %2</translation>
    </message>
    <message>
        <source>Certification lapsed %1</source>
        <translation>Certificación vencida %1</translation>
    </message>
    <message>
        <source>Certification lapsed</source>
        <translation>Certificación vencida</translation>
    </message>
    <message>
        <source>something does not sit right</source>
        <translation>algo no queda bien</translation>
    </message>
    <message>
        <source>, “%1”</source>
        <comment>the athlete&apos;s own words</comment>
        <translation>, “%1”</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>the athlete&apos;s word, when</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>the athlete&apos;s word, how often</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Says: %1</source>
        <translation>Dice: %1</translation>
    </message>
    <message>
        <source>something broke</source>
        <translation>algo se rompió</translation>
    </message>
    <message>
        <source>Break-in look late, day %1</source>
        <translation>Vistazo de asentamiento atrasado, día %1</translation>
    </message>
    <message>
        <source>Break-in look, day %1 of %2</source>
        <translation>Vistazo de asentamiento, día %1 de %2</translation>
    </message>
    <message>
        <source>Helmet is away: %1</source>
        <translation>El casco no está: %1</translation>
    </message>
    <message>
        <source>in repair</source>
        <translation>en reparación</translation>
    </message>
    <message>
        <source>sent out for recertification</source>
        <translation>enviado a recertificar</translation>
    </message>
    <message>
        <source>Helmet is retired</source>
        <translation>El casco está dado de baja</translation>
    </message>
    <message>
        <source>Helmet is lost</source>
        <translation>El casco está perdido</translation>
    </message>
    <message>
        <source>Helmet is away</source>
        <translation>El casco no está</translation>
    </message>
    <message>
        <source>See athlete now</source>
        <translation>Atender ya a esta persona</translation>
    </message>
    <message>
        <source>No helmet yet</source>
        <translation>Aún sin casco</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>why a helmet is held. Held when by whom</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Helmet</source>
        <translation>Casco</translation>
    </message>
    <message>
        <source>%1: fault found</source>
        <translation>%1: falla encontrada</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Certification label is missing</source>
        <translation>Falta la etiqueta de certificación</translation>
    </message>
    <message>
        <source>Certification label not read yet</source>
        <translation>Etiqueta de certificación aún sin leer</translation>
    </message>
    <message>
        <source>Last check: do not wear</source>
        <translation>Última revisión: no usar</translation>
    </message>
    <message>
        <source>Last check: do not wear, %1</source>
        <translation>Última revisión: no usar, %1</translation>
    </message>
    <message>
        <source>Helmet is also down for number %1</source>
        <translation>El casco también figura con el número %1</translation>
    </message>
    <message>
        <source>Two helmets are down for this athlete</source>
        <translation>Dos cascos figuran con esta persona</translation>
    </message>
    <message>
        <source>Two readings of the label differ</source>
        <translation>Dos lecturas de la etiqueta no coinciden</translation>
    </message>
    <message>
        <source>Never fitted in this helmet</source>
        <translation>Nunca se ajustó en este casco</translation>
    </message>
    <message>
        <source>Check left open at %1</source>
        <translation>Revisión abierta en %1</translation>
    </message>
    <message>
        <source>Check left open</source>
        <translation>Revisión abierta</translation>
    </message>
    <message>
        <source>To adjust: %1</source>
        <translation>Por ajustar: %1</translation>
    </message>
    <message>
        <source>To adjust</source>
        <translation>Por ajustar</translation>
    </message>
    <message>
        <source>Hair changed since the last fit</source>
        <translation>El cabello cambió desde el último ajuste</translation>
    </message>
    <message>
        <source>A part was changed since the last fit</source>
        <translation>Se cambió una pieza desde el último ajuste</translation>
    </message>
    <message>
        <source>Fitted on dry hair: see again wet</source>
        <translation>Ajustado con cabello seco: ver otra vez mojado</translation>
    </message>
    <message numerus="yes">
        <source>Weekly look late, %n days since the last</source>
        <translation>
            <numerusform>Vistazo semanal atrasado, %n día desde el último</numerusform>
            <numerusform>Vistazo semanal atrasado, %n días desde el último</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Weekly look, %n days since the last</source>
        <translation>
            <numerusform>Vistazo semanal, %n día desde el último</numerusform>
            <numerusform>Vistazo semanal, %n días desde el último</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 not seen yet</source>
        <translation>%1: aún sin ver</translation>
    </message>
    <message>
        <source>A point not seen yet</source>
        <translation>Un punto aún sin ver</translation>
    </message>
    <message>
        <source>Certification lapses after %1</source>
        <translation>La certificación vence después del %1</translation>
    </message>
    <message>
        <source>Certification lapses soon</source>
        <translation>La certificación vence pronto</translation>
    </message>
    <message numerus="yes">
        <source>Head last taped %n months ago</source>
        <translation>
            <numerusform>Cabeza medida por última vez hace %n mes</numerusform>
            <numerusform>Cabeza medida por última vez hace %n meses</numerusform>
        </translation>
    </message>
    <message>
        <source>Head not taped yet</source>
        <translation>Cabeza aún sin medir</translation>
    </message>
    <message>
        <source>New part: %1</source>
        <translation>Pieza nueva: %1</translation>
    </message>
    <message>
        <source>New part: %1. %2</source>
        <translation>Pieza nueva: %1. %2</translation>
    </message>
    <message>
        <source>Season %1 is closed and this helmet was not handed in</source>
        <translation>La temporada %1 está cerrada y este casco no se entregó</translation>
    </message>
    <message>
        <source>Everybody has a helmet.</source>
        <translation>Todos tienen casco.</translation>
    </message>
    <message>
        <source>Continue</source>
        <translation>Continuar</translation>
    </message>
    <message>
        <source>Swap helmet</source>
        <translation>Cambiar casco</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>No helmet: the last one is on hold</source>
        <translation>Sin casco: el último está retenido</translation>
    </message>
    <message>
        <source>No helmet: the last one is in repair</source>
        <translation>Sin casco: el último está en reparación</translation>
    </message>
    <message>
        <source>No helmet: the last one is sent out for recertification</source>
        <translation>Sin casco: el último salió a recertificarse</translation>
    </message>
    <message>
        <source>No helmet: the last one is retired</source>
        <translation>Sin casco: el último está dado de baja</translation>
    </message>
    <message>
        <source>No helmet: the last one is lost</source>
        <translation>Sin casco: el último está perdido</translation>
    </message>
    <message>
        <source>No helmet: somebody else has the last one</source>
        <translation>Sin casco: otra persona tiene el último</translation>
    </message>
    <message>
        <source>No helmet: the last one is on the shelf</source>
        <translation>Sin casco: el último está en el estante</translation>
    </message>
    <message>
        <source>No helmet: the last one did not fit</source>
        <translation>Sin casco: el último no ajustó</translation>
    </message>
    <message>
        <source>No helmet: the last one did not fit, %1</source>
        <translation>Sin casco: el último no ajustó, %1</translation>
    </message>
    <message>
        <source>With the athletic trainer</source>
        <translation>Con el entrenador atlético o la entrenadora atlética (athletic trainer)</translation>
    </message>
    <message>
        <source>Check the helmet’s seven points before it is worn</source>
        <translation>Revisar los siete puntos del casco antes de que se use</translation>
    </message>
    <message>
        <source>%1, still with the athlete</source>
        <comment>why a helmet is held</comment>
        <translation>%1, todavía lo tiene el atleta</translation>
    </message>
    <message>
        <source>Certification label cannot be read</source>
        <translation>La etiqueta de certificación no se puede leer</translation>
    </message>
    <message>
        <source>Model or size of the helmet is not known</source>
        <translation>No se conoce el modelo o la talla del casco</translation>
    </message>
    <message>
        <source>Helmet is not in service</source>
        <translation>El casco no está en servicio</translation>
    </message>
    <message>
        <source>Old helmet %1 is not to be worn and still with the athlete</source>
        <translation>El casco anterior %1 no se debe usar y todavía lo tiene el atleta</translation>
    </message>
    <message>
        <source>Old helmet %1 is still with the athlete</source>
        <translation>El casco anterior %1 todavía lo tiene el atleta</translation>
    </message>
</context>
<context>
    <name>EmergencyWords</name>
    <message>
        <source>In an emergency</source>
        <translation>En una emergencia</translation>
    </message>
    <message>
        <source>Athletes read this on the stop screen. For the whole team.</source>
        <translation>Los atletas leen esto en la pantalla de alto. Para todo el equipo.</translation>
    </message>
    <message>
        <source>Number to call</source>
        <translation>Número al que llamar</translation>
    </message>
    <message>
        <source>Emergency action plan, in a sentence; may stay empty</source>
        <translation>Plan de acción de emergencia, en una frase; puede quedar vacío</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>FigureStepper</name>
    <message>
        <source>%1 %2. Touch to type it</source>
        <translation>%1 %2. Toque para escribirlo</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin decir</translation>
    </message>
</context>
<context>
    <name>First</name>
    <message>
        <source>Who keeps this Book?</source>
        <translation>¿Quién lleva este Libro?</translation>
    </message>
    <message>
        <source>The same code again</source>
        <translation>El mismo código otra vez</translation>
    </message>
    <message>
        <source>A code for %1</source>
        <translation>Un código para %1</translation>
    </message>
    <message>
        <source>A sheet for the day a code is forgotten</source>
        <translation>Una hoja para el día en que se olvide un código</translation>
    </message>
    <message>
        <source>Recovery sheet</source>
        <translation>Hoja de recuperación</translation>
    </message>
    <message>
        <source>Step 1 of 3</source>
        <translation>Paso 1 de 3</translation>
    </message>
    <message>
        <source>Step 2 of 3: %1 to %2 digits</source>
        <translation>Paso 2 de 3: de %1 a %2 dígitos</translation>
    </message>
    <message>
        <source>Step 3 of 3</source>
        <translation>Paso 3 de 3</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>With a code set, Snugline locks when nobody touches it, and athletes cannot leave Say. Nobody can read a code again: keep it where only you find it.</source>
        <translation>Con un código puesto, Snugline se bloquea cuando nadie lo toca y desde Dilo no se puede salir. Nadie puede volver a leer un código: guárdelo donde solo usted lo encuentre.</translation>
    </message>
    <message>
        <source>Set this code</source>
        <translation>Poner este código</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Make the sheet</source>
        <translation>Hacer la hoja</translation>
    </message>
    <message>
        <source>I keep it on paper</source>
        <translation>La guardo en papel</translation>
    </message>
    <message>
        <source>Later, under People</source>
        <translation>Más tarde, en Personas</translation>
    </message>
    <message>
        <source>Later: look around first</source>
        <translation>Más tarde: primero mirar</translation>
    </message>
    <message>
        <source>Your own phone? Join as an athlete</source>
        <translation>¿Tu propio teléfono? Únete como atleta</translation>
    </message>
    <message>
        <source>The first one is an admin: gives out codes, and is asked when one is forgotten. What is recorded carries initials.</source>
        <translation>La primera persona es responsable: da los códigos y a ella se le pregunta cuando se olvida uno. Lo que se registra lleva iniciales.</translation>
    </message>
    <message>
        <source>Are you an athletic trainer or designated health care professional?</source>
        <translation>¿Es usted entrenador atlético o entrenadora atlética (athletic trainer), o profesional de la salud designado?</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>A forgotten code cannot be read from anywhere. A recovery sheet is one page with a key. It lets one admin set a new code, once. Print it, lock it away from this tablet, and show nobody.</source>
        <translation>Un código olvidado no se puede leer en ningún lado. Una hoja de recuperación es una página con una clave. Permite que una persona responsable ponga un código nuevo, una vez. Imprímala, guárdela bajo llave lejos de esta tableta y no la muestre a nadie.</translation>
    </message>
</context>
<context>
    <name>GaugePage</name>
    <message>
        <source>Gauge</source>
        <translation>Manómetro</translation>
    </message>
    <message>
        <source>A Bluetooth gauge that offers pressure. Typing the value always works too.</source>
        <translation>Un manómetro Bluetooth que ofrece presión. Escribir el valor también sirve siempre.</translation>
    </message>
    <message>
        <source>It is open air: zero</source>
        <translation>Es aire libre: poner a cero</translation>
    </message>
    <message>
        <source>Zero again</source>
        <translation>Cero otra vez</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Intentar de nuevo</translation>
    </message>
    <message>
        <source>Forget this gauge</source>
        <translation>Olvidar este manómetro</translation>
    </message>
    <message>
        <source>Forget %1</source>
        <translation>Olvidar %1</translation>
    </message>
    <message>
        <source>Stop looking</source>
        <translation>Dejar de buscar</translation>
    </message>
    <message>
        <source>Look for another gauge</source>
        <translation>Buscar otro manómetro</translation>
    </message>
    <message>
        <source>Look for gauges</source>
        <translation>Buscar manómetros</translation>
    </message>
    <message>
        <source>Two gauges may read one bladder half a psi (3 kPa) apart. Which gauge it was is kept with every reading, and both raw values.</source>
        <translation>Dos manómetros pueden leer la misma vejiga con media psi (3 kPa) de diferencia. Con cada lectura se guarda con qué manómetro fue, y los dos valores sin corregir.</translation>
    </message>
</context>
<context>
    <name>GaugeReadout</name>
    <message>
        <source>Zero in open air</source>
        <translation>Cero al aire libre</translation>
    </message>
    <message>
        <source>Unit of the read-out</source>
        <translation>Unidad de la lectura</translation>
    </message>
    <message>
        <source>kPa</source>
        <translation>kPa</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>Choose a gauge</source>
        <translation>Elegir un manómetro</translation>
    </message>
</context>
<context>
    <name>GaugeWords</name>
    <message>
        <source>the connection was lost</source>
        <translation>se perdió la conexión</translation>
    </message>
    <message>
        <source>it was not found</source>
        <translation>no se encontró</translation>
    </message>
    <message>
        <source>another device holds it</source>
        <translation>otro dispositivo lo tiene</translation>
    </message>
    <message>
        <source>it refused a reading</source>
        <translation>se negó a dar una lectura</translation>
    </message>
    <message>
        <source>it did not answer in time</source>
        <translation>no respondió a tiempo</translation>
    </message>
    <message>
        <source>it did not work</source>
        <translation>no funcionó</translation>
    </message>
    <message>
        <source>Looking for the gauge took too long</source>
        <translation>La búsqueda del manómetro tardó demasiado</translation>
    </message>
    <message>
        <source>Connecting took too long</source>
        <translation>La conexión tardó demasiado</translation>
    </message>
    <message>
        <source>The gauge did not say in time what it offers</source>
        <translation>El manómetro no dijo a tiempo lo que ofrece</translation>
    </message>
    <message>
        <source>The gauge sent nothing in time</source>
        <translation>El manómetro no envió nada a tiempo</translation>
    </message>
    <message>
        <source>The gauge did not answer in time</source>
        <translation>El manómetro no respondió a tiempo</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1. Trying again.</source>
        <translation>%1. Se intenta de nuevo.</translation>
    </message>
    <message>
        <source>%1. Trying again, %2 of %3.</source>
        <translation>%1. Se intenta de nuevo, %2 de %3.</translation>
    </message>
    <message>
        <source>Looking for gauges nearby. Switch the gauge on and hold it close.</source>
        <translation>Buscando manómetros cercanos. Enciéndalo y acérquelo.</translation>
    </message>
    <message>
        <source>Connecting to the gauge.</source>
        <translation>Conectando con el manómetro.</translation>
    </message>
    <message>
        <source>Asking the gauge what it offers.</source>
        <translation>Preguntando al manómetro qué ofrece.</translation>
    </message>
    <message>
        <source>Asking the gauge to send its readings.</source>
        <translation>Pidiendo al manómetro que envíe sus lecturas.</translation>
    </message>
    <message>
        <source>Connected. This gauge is asked for each reading, so that the number comes a little later.</source>
        <translation>Conectado. A este manómetro se le pide cada lectura, así que el número llega un poco después.</translation>
    </message>
    <message>
        <source>Bluetooth is off on this device. Switch it on and it goes on by itself.</source>
        <translation>El Bluetooth de este dispositivo está apagado. Al encenderlo, sigue por sí solo.</translation>
    </message>
    <message>
        <source>This device has no Bluetooth. Type the value instead.</source>
        <translation>Este dispositivo no tiene Bluetooth. Escriba el valor.</translation>
    </message>
    <message>
        <source>Snugline may not use Bluetooth on this device. Allow it in the system&apos;s settings, or type the value.</source>
        <translation>Snugline no tiene permiso para usar Bluetooth en este dispositivo. Permítalo en los ajustes del sistema, o escriba el valor.</translation>
    </message>
    <message>
        <source>This system finds gauges only while location is on. Switch it on, or type the value.</source>
        <translation>Este sistema solo encuentra manómetros con la ubicación encendida. Enciéndala, o escriba el valor.</translation>
    </message>
    <message>
        <source>The gauge went away</source>
        <translation>El manómetro desapareció</translation>
    </message>
    <message>
        <source>The gauge does not answer. Switch it on and hold it close</source>
        <translation>El manómetro no responde. Enciéndalo y acérquelo</translation>
    </message>
    <message>
        <source>Another device holds the gauge. End the connection there</source>
        <translation>Otro dispositivo tiene el manómetro. Termine la conexión allí</translation>
    </message>
    <message>
        <source>The gauge refused a reading</source>
        <translation>El manómetro se negó a dar una lectura</translation>
    </message>
    <message>
        <source>Several gauges look like the remembered one. Choose it under Settings, Gauge.</source>
        <translation>Varios manómetros se parecen al recordado. Elíjalo en Ajustes, Manómetro.</translation>
    </message>
    <message>
        <source>This device offers no pressure. It is another kind of device, or another kind of gauge.</source>
        <translation>Este dispositivo no ofrece presión. Es otro tipo de dispositivo, u otro tipo de manómetro.</translation>
    </message>
    <message>
        <source>This gauge offers several pressures and does not say which is which. Its value is not taken; type it instead.</source>
        <translation>Este manómetro ofrece varias presiones y no dice cuál es cuál. No se toma su valor; escríbalo.</translation>
    </message>
    <message>
        <source>No connection: %1. Touch Try again, or type the value.</source>
        <translation>Sin conexión: %1. Toque Intentar de nuevo, o escriba el valor.</translation>
    </message>
    <message>
        <source>The gauge sent %1 bytes where a reading has %2. No value is taken.</source>
        <translation>El manómetro envió %1 bytes donde una lectura tiene %2. No se toma ningún valor.</translation>
    </message>
    <message>
        <source>The gauge sent something that cannot be read. No value is taken.</source>
        <translation>El manómetro envió algo que no se puede leer. No se toma ningún valor.</translation>
    </message>
    <message>
        <source>The gauge says that it does not know the pressure now. No value is taken.</source>
        <translation>El manómetro dice que ahora no conoce la presión. No se toma ningún valor.</translation>
    </message>
    <message>
        <source>The gauge sent %1 absolute, which no helmet holds. No value is taken.</source>
        <translation>El manómetro envió %1 absolutos, que ningún casco contiene. No se toma ningún valor.</translation>
    </message>
    <message>
        <source>There is no pressure to take as zero yet.</source>
        <translation>Aún no hay presión que tomar como cero.</translation>
    </message>
    <message>
        <source>%1 is not open air anywhere. No zero is taken.</source>
        <translation>%1 no es aire libre en ningún lugar. No se toma el cero.</translation>
    </message>
    <message>
        <source>Open air should read about %1 here, and the gauge reads %2. Is the needle out of the bladder, and is the elevation right?</source>
        <translation>El aire libre aquí debería marcar cerca de %1, y el manómetro marca %2. ¿Está la aguja fuera de la vejiga, y es correcta la altitud?</translation>
    </message>
</context>
<context>
    <name>Gear</name>
    <message>
        <source>Certification</source>
        <translation>Certificación</translation>
    </message>
    <message>
        <source>Warning label</source>
        <translation>Etiqueta de advertencia</translation>
    </message>
    <message>
        <source>Shell</source>
        <translation>Carcasa</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Herrajes</translation>
    </message>
    <message>
        <source>Faceguard</source>
        <translation>Careta</translation>
    </message>
    <message>
        <source>Chin strap</source>
        <translation>Barboquejo</translation>
    </message>
    <message>
        <source>Label there, readable, in date</source>
        <translation>Etiqueta presente, legible, vigente</translation>
    </message>
    <message>
        <source>On the outside, readable</source>
        <translation>Por fuera, legible</translation>
    </message>
    <message>
        <source>No crack, dent or add-on</source>
        <translation>Sin grietas, golpes ni añadidos</translation>
    </message>
    <message>
        <source>Snaps and clips firm, screws turn</source>
        <translation>Broches y clips firmes, los tornillos giran</translation>
    </message>
    <message>
        <source>Straight, coated, tight</source>
        <translation>Recta, recubierta, firme</translation>
    </message>
    <message>
        <source>All there, holds air, clean</source>
        <translation>Completo, retiene el aire, limpio</translation>
    </message>
    <message>
        <source>Cup and every strap whole</source>
        <translation>Mentonera y todas las correas enteras</translation>
    </message>
    <message>
        <source>label missing</source>
        <translation>falta la etiqueta</translation>
    </message>
    <message>
        <source>label not readable</source>
        <translation>etiqueta ilegible</translation>
    </message>
    <message>
        <source>out of date</source>
        <translation>vencida</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>not readable</source>
        <translation>ilegible</translation>
    </message>
    <message>
        <source>covered by a decal</source>
        <translation>tapada por una calcomanía</translation>
    </message>
    <message>
        <source>crack</source>
        <translation>grieta</translation>
    </message>
    <message>
        <source>deep dent</source>
        <translation>golpe hondo</translation>
    </message>
    <message>
        <source>hole drilled</source>
        <translation>agujero perforado</translation>
    </message>
    <message>
        <source>something added</source>
        <translation>algo añadido</translation>
    </message>
    <message>
        <source>snap loose</source>
        <translation>broche flojo</translation>
    </message>
    <message>
        <source>clip broken</source>
        <translation>clip roto</translation>
    </message>
    <message>
        <source>screw stuck</source>
        <translation>tornillo trabado</translation>
    </message>
    <message>
        <source>part missing</source>
        <translation>falta una pieza</translation>
    </message>
    <message>
        <source>bare metal</source>
        <translation>metal descubierto</translation>
    </message>
    <message>
        <source>bent bar</source>
        <translation>barra doblada</translation>
    </message>
    <message>
        <source>cracked weld</source>
        <translation>soldadura agrietada</translation>
    </message>
    <message>
        <source>loose</source>
        <translation>flojo</translation>
    </message>
    <message>
        <source>pad missing</source>
        <translation>falta una almohadilla</translation>
    </message>
    <message>
        <source>loses air</source>
        <translation>pierde aire</translation>
    </message>
    <message>
        <source>torn</source>
        <translation>desgarrado</translation>
    </message>
    <message>
        <source>packed down hard</source>
        <translation>aplastado y duro</translation>
    </message>
    <message>
        <source>strap frayed</source>
        <translation>correa deshilachada</translation>
    </message>
    <message>
        <source>buckle broken</source>
        <translation>hebilla rota</translation>
    </message>
    <message>
        <source>cup torn</source>
        <translation>mentonera rota</translation>
    </message>
    <message>
        <source>strap missing</source>
        <translation>falta una correa</translation>
    </message>
    <message>
        <source>Not seen</source>
        <translation>Sin ver</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>En buen estado</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Falla</translation>
    </message>
    <message>
        <source>Fault: %1</source>
        <translation>Falla: %1</translation>
    </message>
    <message>
        <source>certified %1</source>
        <translation>certificado %1</translation>
    </message>
    <message>
        <source>maker&apos;s mark %1</source>
        <translation>marca del fabricante %1</translation>
    </message>
    <message>
        <source>label %1</source>
        <translation>etiqueta %1</translation>
    </message>
    <message>
        <source>Maker&apos;s mark %1</source>
        <translation>Marca del fabricante %1</translation>
    </message>
    <message>
        <source>Label %1</source>
        <translation>Etiqueta %1</translation>
    </message>
    <message>
        <source>Certified %1</source>
        <translation>Certificado %1</translation>
    </message>
    <message>
        <source>Certified %1 by %2</source>
        <translation>Certificado %1 por %2</translation>
    </message>
    <message>
        <source>%1: good to %2</source>
        <translation>%1: válida hasta el %2</translation>
    </message>
    <message>
        <source>%1: good to between %2 and %3, judged by the earlier</source>
        <translation>%1: válida hasta entre el %2 y el %3; se juzga por la primera fecha</translation>
    </message>
    <message>
        <source>%1: good to between %2 and %3, judged by the earlier, so lapsed</source>
        <translation>%1: válida hasta entre el %2 y el %3; se juzga por la primera fecha, así que está vencida</translation>
    </message>
    <message>
        <source>%1: lapsed, last good day %2</source>
        <translation>%1: vencida, último día bueno %2</translation>
    </message>
    <message>
        <source>Label looked for and missing</source>
        <translation>Se buscó la etiqueta y falta</translation>
    </message>
    <message>
        <source>No label read yet</source>
        <translation>Aún no se lee ninguna etiqueta</translation>
    </message>
    <message>
        <source>%1. Two readings differ: read it again</source>
        <translation>%1. Dos lecturas no coinciden: léala otra vez</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etiqueta</translation>
    </message>
    <message>
        <source>Label missing</source>
        <translation>Falta la etiqueta</translation>
    </message>
    <message>
        <source>Fit not reached</source>
        <translation>No se logró el ajuste</translation>
    </message>
    <message>
        <source>Something broke</source>
        <translation>Algo se rompió</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>not seen yet</source>
        <translation>aún sin ver</translation>
    </message>
    <message>
        <source>lapsed</source>
        <translation>vencida</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>En el estante</translation>
    </message>
    <message>
        <source>With an athlete</source>
        <translation>En uso</translation>
    </message>
    <message>
        <source>In repair</source>
        <translation>En reparación</translation>
    </message>
    <message>
        <source>Sent out</source>
        <translation>Enviado</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Dado de baja</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdido</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>family name, given name</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1.</source>
        <comment>initial</comment>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1. %2.</source>
        <comment>initials</comment>
        <translation>%1. %2.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>jersey, name</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>size %1</source>
        <translation>talla %1</translation>
    </message>
    <message>
        <source>%1, size %2</source>
        <translation>%1, talla %2</translation>
    </message>
    <message>
        <source>A head of %1 is larger than expected: tape it again. Not recorded</source>
        <translation>Una cabeza de %1 es más grande de lo esperado: mídala otra vez. No se registra</translation>
    </message>
    <message>
        <source>A head of %1 is smaller than expected: tape it again. Not recorded</source>
        <translation>Una cabeza de %1 es más pequeña de lo esperado: mídala otra vez. No se registra</translation>
    </message>
    <message>
        <source>Jersey %1 is on the roster already</source>
        <translation>La camiseta %1 ya está en el plantel</translation>
    </message>
    <message>
        <source>Birth year %1 looks unlikely</source>
        <translation>El año de nacimiento %1 parece poco probable</translation>
    </message>
    <message>
        <source>No name in this row</source>
        <translation>No hay nombre en este renglón</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a jersey number</source>
        <translation>&quot;%1&quot; no es un número de camiseta</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a head size, such as 575 mm or 22.5 in</source>
        <translation>&quot;%1&quot; no es una medida de cabeza, como 575 mm o 22.5 in</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a birth year</source>
        <translation>&quot;%1&quot; no es un año de nacimiento</translation>
    </message>
    <message>
        <source>Fewer cells than the header has</source>
        <translation>Menos celdas que el encabezado</translation>
    </message>
    <message>
        <source>More cells than the header has</source>
        <translation>Más celdas que el encabezado</translation>
    </message>
    <message>
        <source>A quote is opened and never closed</source>
        <translation>Se abre una comilla y nunca se cierra</translation>
    </message>
    <message>
        <source>Characters that cannot be printed</source>
        <translation>Caracteres que no se pueden imprimir</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be a serial tag</source>
        <translation>&quot;%1&quot; no puede ser una placa de serie</translation>
    </message>
    <message>
        <source>No model sheet &quot;%1&quot; is adopted</source>
        <translation>No hay ninguna ficha de modelo &quot;%1&quot; adoptada</translation>
    </message>
    <message>
        <source>The model sheet has no size &quot;%1&quot;</source>
        <translation>La ficha de modelo no tiene la talla &quot;%1&quot;</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a label year</source>
        <translation>&quot;%1&quot; no es un año de etiqueta</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is none of the seven points</source>
        <translation>&quot;%1&quot; no es ninguno de los siete puntos</translation>
    </message>
    <message>
        <source>%1 is retired and stays so</source>
        <translation>%1 está dado de baja y así se queda</translation>
    </message>
    <message>
        <source>The same row stands further up</source>
        <translation>El mismo renglón está más arriba</translation>
    </message>
    <message>
        <source>Maker&apos;s notice</source>
        <translation>Aviso del fabricante</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>Liner</source>
        <translation>Forro</translation>
    </message>
    <message>
        <source>All there, clean</source>
        <translation>Completo, limpio</translation>
    </message>
    <message>
        <source>Label cannot be read</source>
        <translation>La etiqueta no se puede leer</translation>
    </message>
    <message>
        <source>%1 is away for repair or recertification. Say at the Dock what was done</source>
        <translation>%1 está fuera, en reparación o recertificación. Diga en Recepción qué se hizo</translation>
    </message>
</context>
<context>
    <name>Guide</name>
    <message>
        <source>Leave the check open</source>
        <translation>Dejar la revisión abierta</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Entendido</translation>
    </message>
    <message>
        <source>Lower</source>
        <translation>Más bajo</translation>
    </message>
    <message>
        <source>Higher</source>
        <translation>Más alto</translation>
    </message>
    <message>
        <source>Use this reading</source>
        <translation>Usar esta lectura</translation>
    </message>
</context>
<context>
    <name>GuideAsides</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Back to where the guide stands</source>
        <translation>Volver a donde está la guía</translation>
    </message>
    <message>
        <source>Read the gauge</source>
        <translation>Leer el manómetro</translation>
    </message>
</context>
<context>
    <name>GuideMore</name>
    <message>
        <source>Read the gauge</source>
        <translation>Leer el manómetro</translation>
    </message>
    <message>
        <source>Nothing is changed; hold is seen again</source>
        <translation>No se cambia nada; se vuelve a ver la sujeción</translation>
    </message>
    <message>
        <source>Leave it open</source>
        <translation>Dejarla abierta</translation>
    </message>
    <message>
        <source>Stands on the board under See before practice, at this question</source>
        <translation>Queda en el tablero en Ver antes de la práctica, en esta pregunta</translation>
    </message>
    <message>
        <source>End it here</source>
        <translation>Terminarla aquí</translation>
    </message>
    <message>
        <source>Recorded as it stands</source>
        <translation>Se registra como está</translation>
    </message>
</context>
<context>
    <name>GuidePageWords</name>
    <message>
        <source>Another way</source>
        <translation>Otra manera</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Hair</source>
        <translation>Cabello</translation>
    </message>
    <message>
        <source>Fitted pads</source>
        <translation>Almohadillas puestas</translation>
    </message>
    <message>
        <source>Starting air</source>
        <translation>Aire inicial</translation>
    </message>
    <message>
        <source>Seven points</source>
        <translation>Siete puntos</translation>
    </message>
    <message>
        <source>%1. %2: %3</source>
        <comment>order, bladder, pressure</comment>
        <translation>%1. %2: %3</translation>
    </message>
    <message>
        <source>read on the gauge</source>
        <translation>leído en el manómetro</translation>
    </message>
    <message>
        <source>the sheet&apos;s start</source>
        <translation>el inicio de la ficha</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>pad, thickness</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>elegido</translation>
    </message>
    <message>
        <source>as delivered</source>
        <translation>como vino</translation>
    </message>
    <message>
        <source>Which pads are in the helmet?</source>
        <translation>¿Qué almohadillas tiene el casco?</translation>
    </message>
    <message>
        <source>Touch a pad to choose its thickness.</source>
        <translation>Toque una almohadilla para elegir su grosor.</translation>
    </message>
    <message>
        <source>As listed</source>
        <translation>Como está en la lista</translation>
    </message>
    <message>
        <source>Set the air in this order, helmet on, athlete on a knee.</source>
        <translation>Ponga el aire en este orden, con el casco puesto y una rodilla en el suelo.</translation>
    </message>
    <message>
        <source>Touch a bladder to say what the gauge reads.</source>
        <translation>Toque una vejiga para decir lo que marca el manómetro.</translation>
    </message>
    <message>
        <source>All set, go on</source>
        <translation>Todo puesto, seguir</translation>
    </message>
    <message>
        <source>The rest as listed</source>
        <translation>El resto como está en la lista</translation>
    </message>
    <message>
        <source>Set as listed</source>
        <translation>Puesto como está en la lista</translation>
    </message>
    <message>
        <source>by gauge</source>
        <translation>con manómetro</translation>
    </message>
    <message>
        <source>No gauge for the rest</source>
        <translation>Sin manómetro para el resto</translation>
    </message>
    <message>
        <source>No gauge here</source>
        <translation>Aquí no hay manómetro</translation>
    </message>
    <message>
        <source>by pumps and feel</source>
        <translation>por bombeos y al tacto</translation>
    </message>
    <message>
        <source>No bladder reads that. See the number and the unit.</source>
        <translation>Ninguna vejiga marca eso. Revise el número y la unidad.</translation>
    </message>
    <message>
        <source>Sheet: %1, between %2 and %3</source>
        <comment>start, lowest, highest with unit</comment>
        <translation>Ficha: %1, entre %2 y %3</translation>
    </message>
    <message>
        <source>Starting air: %1</source>
        <comment>bladder</comment>
        <translation>Aire inicial: %1</translation>
    </message>
    <message>
        <source>What does the gauge read?</source>
        <translation>¿Qué marca el manómetro?</translation>
    </message>
    <message>
        <source>Reads %1</source>
        <translation>Marca %1</translation>
    </message>
    <message>
        <source>back to the list</source>
        <translation>volver a la lista</translation>
    </message>
    <message>
        <source>Which thickness is in the helmet?</source>
        <translation>¿Qué grosor tiene el casco?</translation>
    </message>
    <message>
        <source>Back to the list</source>
        <translation>Volver a la lista</translation>
    </message>
    <message>
        <source>Read the gauge</source>
        <translation>Leer el manómetro</translation>
    </message>
    <message>
        <source>Which bladder?</source>
        <translation>¿Qué vejiga?</translation>
    </message>
    <message>
        <source>A reading through the needle can bleed a small bladder: hold is seen again.</source>
        <translation>Una lectura con la aguja puede vaciar un poco una vejiga pequeña: se vuelve a ver la sujeción.</translation>
    </message>
    <message>
        <source>Nothing, go back</source>
        <translation>Nada, volver</translation>
    </message>
    <message>
        <source>On the head</source>
        <translation>En la cabeza</translation>
    </message>
    <message>
        <source>Off the head</source>
        <translation>Fuera de la cabeza</translation>
    </message>
    <message>
        <source>Put the check away</source>
        <translation>Guardar la revisión</translation>
    </message>
    <message>
        <source>Is the hair wet?</source>
        <translation>¿Está mojado el cabello?</translation>
    </message>
    <message>
        <source>Water or sweat, worn as in play: braided, covered or shaved as it is. Then helmet on.</source>
        <translation>Agua o sudor, peinado como se juega: trenzado, cubierto o rapado, como esté. Luego se pone el casco.</translation>
    </message>
    <message>
        <source>Wet</source>
        <translation>Mojado</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Seco</translation>
    </message>
    <message>
        <source>to see again wet</source>
        <translation>ver otra vez mojado</translation>
    </message>
    <message>
        <source>Touch what is off, on the drawing or below.</source>
        <translation>Toque lo que está mal, en el dibujo o abajo.</translation>
    </message>
    <message>
        <source>All snug</source>
        <translation>Todo ajusta bien</translation>
    </message>
    <message>
        <source>Cannot be tried</source>
        <translation>No se puede probar</translation>
    </message>
    <message>
        <source>Ahead, behind or turned</source>
        <translation>Adelante, atrás o girado</translation>
    </message>
    <message>
        <source>Something is broken</source>
        <translation>Algo está roto</translation>
    </message>
    <message>
        <source>Athlete says: %1</source>
        <translation>La persona dice: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>the side that is spoken of, the question</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>If so: %1</source>
        <comment>what is likely advised</comment>
        <translation>Si es así: %1</translation>
    </message>
    <message>
        <source>It sits at %1</source>
        <translation>Queda a %1</translation>
    </message>
    <message>
        <source>%1: on which side?</source>
        <translation>%1: ¿de qué lado?</translation>
    </message>
    <message>
        <source>The athlete&apos;s left and right. Or touch it on the drawing.</source>
        <translation>La izquierda y la derecha de quien lleva el casco. O tóquelo en el dibujo.</translation>
    </message>
    <message>
        <source>Slides: in what?</source>
        <translation>Se desliza: ¿al hacer qué?</translation>
    </message>
    <message>
        <source>Twist left and right, rock from behind, press down on the crown.</source>
        <translation>Gire a izquierda y derecha, mueva desde atrás, presione la coronilla hacia abajo.</translation>
    </message>
    <message>
        <source>Why can it not be tried?</source>
        <translation>¿Por qué no se puede probar?</translation>
    </message>
    <message>
        <source>How do the ear openings stand?</source>
        <translation>¿Cómo están las aberturas de los oídos?</translation>
    </message>
    <message>
        <source>What is broken?</source>
        <translation>¿Qué está roto?</translation>
    </message>
    <message numerus="yes">
        <source>%n pump(s)</source>
        <translation>
            <numerusform>%n bombeo</numerusform>
            <numerusform>%n bombeos</numerusform>
        </translation>
    </message>
    <message>
        <source>reads %1</source>
        <translation>marca %1</translation>
    </message>
    <message>
        <source>done, see again</source>
        <translation>hecho, ver otra vez</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a point, its fault</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Do not wear</source>
        <translation>No usar</translation>
    </message>
    <message>
        <source>Hold this helmet. It is not worn until that is put right.</source>
        <translation>Retenga este casco. No se usa hasta que se corrija.</translation>
    </message>
    <message>
        <source>Hold this helmet</source>
        <translation>Retener este casco</translation>
    </message>
    <message>
        <source>See the rest first</source>
        <translation>Ver primero el resto</translation>
    </message>
    <message>
        <source>The helmet itself: all seven sound?</source>
        <translation>El casco mismo: ¿los siete en buen estado?</translation>
    </message>
    <message>
        <source>The rest of the helmet: sound?</source>
        <translation>El resto del casco: ¿en buen estado?</translation>
    </message>
    <message>
        <source>Touch what is not sound, on the drawing or below.</source>
        <translation>Toque lo que no está en buen estado, en el dibujo o abajo.</translation>
    </message>
    <message>
        <source>All seven sound</source>
        <translation>Los siete en buen estado</translation>
    </message>
    <message>
        <source>The rest is sound</source>
        <translation>El resto está en buen estado</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>En buen estado</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Falla</translation>
    </message>
    <message>
        <source>What is at fault?</source>
        <translation>¿Qué tiene la falla?</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
    <message>
        <source>From the model sheet</source>
        <translation>De la ficha de modelo</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>stays open on the board</source>
        <translation>queda abierto en el tablero</translation>
    </message>
</context>
<context>
    <name>GuideWords</name>
    <message>
        <source>First fit</source>
        <translation>Primer ajuste</translation>
    </message>
    <message>
        <source>Refit</source>
        <translation>Nuevo ajuste</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Vistazo</translation>
    </message>
    <message>
        <source>a little air</source>
        <translation>un poco de aire</translation>
    </message>
    <message numerus="yes">
        <source>%n pump(s)</source>
        <translation>
            <numerusform>%n bombeo</numerusform>
            <numerusform>%n bombeos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2 pumps</source>
        <translation>de %1 a %2 bombeos</translation>
    </message>
    <message>
        <source>Swap the %1.</source>
        <translation>Cambie la %1.</translation>
    </message>
    <message>
        <source>Swap the %1 for the one of %2.</source>
        <translation>Cambie la %1 por la de %2.</translation>
    </message>
    <message>
        <source>Lengthen the straps evenly on both sides.</source>
        <translation>Alargue las correas por igual en ambos lados.</translation>
    </message>
    <message>
        <source>Shorten the straps evenly on both sides.</source>
        <translation>Acorte las correas por igual en ambos lados.</translation>
    </message>
    <message>
        <source>Set the straps to even length on both sides.</source>
        <translation>Ponga las correas al mismo largo en ambos lados.</translation>
    </message>
    <message>
        <source>Change the %1.</source>
        <translation>Cambie: %1.</translation>
    </message>
    <message>
        <source>Put %1 into the %2.</source>
        <comment>1 to 3 pumps, crown</comment>
        <translation>Ponga %1 en la %2.</translation>
    </message>
    <message>
        <source>Let %1 out of the %2.</source>
        <comment>1 to 3 pumps, crown</comment>
        <translation>Saque %1 de la %2.</translation>
    </message>
    <message>
        <source>Reroute the straps under the faceguard, as the sheet draws them.</source>
        <translation>Pase las correas otra vez por debajo de la careta, como las dibuja la ficha.</translation>
    </message>
    <message>
        <source>Take the helmet off and seat it again, low and level.</source>
        <translation>Quite el casco y póngalo de nuevo, bajo y nivelado.</translation>
    </message>
    <message>
        <source>See the straps first: every snap done up, even, routed.</source>
        <translation>Vea primero las correas: todos los broches cerrados, parejas, bien pasadas.</translation>
    </message>
    <message>
        <source>Try it again: grip the shell, athlete braces.</source>
        <translation>Pruebe otra vez: sujete la carcasa; quien la lleva se pone firme.</translation>
    </message>
    <message>
        <source>Replace the %1. The helmet is not worn until that is done.</source>
        <translation>Reemplace: %1. El casco no se usa hasta que se haga.</translation>
    </message>
    <message>
        <source>Everything here is used up: try the next size up.</source>
        <translation>Aquí ya se agotó todo: pruebe la talla siguiente más grande.</translation>
    </message>
    <message>
        <source>Everything here is used up: try the next size down.</source>
        <translation>Aquí ya se agotó todo: pruebe la talla siguiente más pequeña.</translation>
    </message>
    <message>
        <source>Everything here is used up: try another model.</source>
        <translation>Aquí ya se agotó todo: pruebe otro modelo.</translation>
    </message>
    <message>
        <source>Hold this helmet. It is not worn until it is repaired.</source>
        <translation>Retenga este casco. No se usa hasta que se repare.</translation>
    </message>
    <message>
        <source>Athlete on a knee, needle wetted. Then stand and see again.</source>
        <translation>Una rodilla en el suelo, aguja humedecida. Luego de pie y ver otra vez.</translation>
    </message>
    <message>
        <source>Helmet off for the swap. A handed pair stays a pair.</source>
        <translation>Quite el casco para el cambio. Un par de izquierda y derecha sigue siendo un par.</translation>
    </message>
    <message>
        <source>Then see again: %1.</source>
        <translation>Luego vea otra vez: %1.</translation>
    </message>
    <message>
        <source>Done, see again</source>
        <translation>Hecho, ver otra vez</translation>
    </message>
    <message>
        <source>Hold this helmet</source>
        <translation>Retener este casco</translation>
    </message>
    <message>
        <source>End: another helmet</source>
        <translation>Terminar: otro casco</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Quedó abierta</translation>
    </message>
    <message>
        <source>Fits</source>
        <translation>Queda bien</translation>
    </message>
    <message>
        <source>Adjust</source>
        <translation>Por ajustar</translation>
    </message>
    <message>
        <source>Do not wear</source>
        <translation>No usar</translation>
    </message>
    <message>
        <source>A question of the model sheet was answered no</source>
        <translation>Una pregunta de la ficha de modelo se respondió que no</translation>
    </message>
    <message>
        <source>Helmet</source>
        <translation>Casco</translation>
    </message>
    <message>
        <source>%1: fault</source>
        <translation>%1: falla</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: every way is used up, try the next size up</source>
        <translation>%1: se agotaron las maneras, pruebe la talla siguiente más grande</translation>
    </message>
    <message>
        <source>%1: every way is used up, try the next size down</source>
        <translation>%1: se agotaron las maneras, pruebe la talla siguiente más pequeña</translation>
    </message>
    <message>
        <source>%1: every way is used up, try another model</source>
        <translation>%1: se agotaron las maneras, pruebe otro modelo</translation>
    </message>
    <message>
        <source>Certification lapsed %1</source>
        <translation>Certificación vencida %1</translation>
    </message>
    <message>
        <source>Certification lapsed</source>
        <translation>Certificación vencida</translation>
    </message>
    <message>
        <source>Certification label is missing</source>
        <translation>Falta la etiqueta de certificación</translation>
    </message>
    <message>
        <source>Certification label not read yet</source>
        <translation>Etiqueta de certificación aún sin leer</translation>
    </message>
    <message>
        <source>Hold cannot be tried</source>
        <translation>La sujeción no se puede probar</translation>
    </message>
    <message>
        <source>Hair: not said whether it is wet</source>
        <translation>Cabello: no se dijo si está mojado</translation>
    </message>
    <message>
        <source>Fitted on dry hair: see again with hair wet</source>
        <translation>Ajustado con cabello seco: ver otra vez con el cabello mojado</translation>
    </message>
    <message>
        <source>%1 not seen</source>
        <translation>%1: sin ver</translation>
    </message>
    <message>
        <source>A question of the model sheet is not answered</source>
        <translation>Una pregunta de la ficha de modelo está sin responder</translation>
    </message>
    <message>
        <source>Athlete&apos;s word on the %1 not answered</source>
        <translation>Sin responder lo que se dijo: %1</translation>
    </message>
    <message>
        <source>Athlete says something broke: see the seven points</source>
        <translation>Se dijo que algo se rompió: vea los siete puntos</translation>
    </message>
    <message>
        <source>See athlete now</source>
        <translation>Atender ya a esta persona</translation>
    </message>
    <message>
        <source>certification lapsed</source>
        <translation>certificación vencida</translation>
    </message>
    <message>
        <source>certification label missing</source>
        <translation>falta la etiqueta de certificación</translation>
    </message>
    <message>
        <source>dry hair</source>
        <translation>cabello seco</translation>
    </message>
    <message>
        <source>something broke</source>
        <translation>algo se rompió</translation>
    </message>
    <message>
        <source>certification label not read</source>
        <translation>etiqueta de certificación sin leer</translation>
    </message>
    <message>
        <source>hair not seen</source>
        <translation>cabello sin ver</translation>
    </message>
    <message>
        <source>see athlete now</source>
        <translation>atender ya a esta persona</translation>
    </message>
    <message>
        <source>%1 could not be reached</source>
        <translation>%1: no se pudo lograr</translation>
    </message>
    <message>
        <source>athlete&apos;s word on the %1 not answered</source>
        <translation>sin responder lo que se dijo: %1</translation>
    </message>
    <message>
        <source>%1 could not be tried</source>
        <translation>%1: no se pudo probar</translation>
    </message>
    <message>
        <source>%1 at fault</source>
        <comment>a point of the helmet</comment>
        <translation>%1 con falla</translation>
    </message>
    <message>
        <source>Next look %1.</source>
        <translation>Próximo vistazo %1.</translation>
    </message>
    <message>
        <source>Next look from %1, at the latest %2.</source>
        <translation>Próximo vistazo desde %1, a más tardar %2.</translation>
    </message>
    <message>
        <source>Stays on the board under “See before practice” until it is put right.</source>
        <translation>Queda en el tablero en “Ver antes de la práctica” hasta que se corrija.</translation>
    </message>
    <message>
        <source>Helmet %1 is held. Choose another for this athlete.</source>
        <translation>El casco %1 está retenido. Elija otro para esta persona.</translation>
    </message>
    <message>
        <source>Choose another helmet: the next one is a new check.</source>
        <translation>Elija otro casco: el siguiente es una revisión nueva.</translation>
    </message>
    <message>
        <source>Stays on the board under “See before practice”. Go on from there.</source>
        <translation>Queda en el tablero en “Ver antes de la práctica”. Siga desde ahí.</translation>
    </message>
    <message>
        <source>Follow the helmet maker&apos;s instructions and local rules; they come first. No helmet prevents concussion.</source>
        <translation>Siga las instrucciones del fabricante del casco y las reglas locales; van primero. Ningún casco evita una conmoción cerebral.</translation>
    </message>
    <message>
        <source>Not here? Tell a coach or any adult now.</source>
        <translation>¿No está? Avisar ya al coach o a cualquier adulto.</translation>
    </message>
    <message>
        <source>Emergency: call %1</source>
        <comment>a number</comment>
        <translation>Emergencia: llamar al %1</translation>
    </message>
    <message>
        <source>Stop. Tell the athletic trainer now. Out at once and out for the day; follow the local concussion protocol. Back only with written permission from a licensed health care professional.</source>
        <translation>Alto. Avise ya al entrenador atlético o a la entrenadora atlética (athletic trainer). Fuera de inmediato y por todo el día; siga el protocolo local de conmoción cerebral. Vuelve solo con permiso escrito de profesionales de la salud con licencia.</translation>
    </message>
    <message>
        <source>The helmet is cold: warm it first.</source>
        <translation>El casco está frío: primero caliéntelo.</translation>
    </message>
    <message>
        <source>Bring it indoors until it is as warm as the room. Then see it again.</source>
        <translation>Llévelo adentro hasta que esté a la temperatura del cuarto. Luego véalo otra vez.</translation>
    </message>
    <message>
        <source>Bring it indoors until it is as warm as the room. Let no air out in the cold. Then see it again.</source>
        <translation>Llévelo adentro hasta que esté a la temperatura del cuarto. No saque aire en frío. Luego véalo otra vez.</translation>
    </message>
    <message>
        <source>Cold: one pump at a time. Athlete on a knee, needle wetted. Then stand and see again.</source>
        <translation>Frío: un bombeo a la vez. Una rodilla en el suelo, aguja humedecida. Luego de pie y ver otra vez.</translation>
    </message>
    <message>
        <source>It is warm now</source>
        <translation>Ya está tibio</translation>
    </message>
    <message>
        <source>Fits for this cold. See it again before the next session that is warmer, at the latest %1.</source>
        <translation>Ajusta para este frío. Véalo otra vez antes de la próxima sesión que sea más cálida, a más tardar %1.</translation>
    </message>
</context>
<context>
    <name>HeadCard</name>
    <message>
        <source>Head</source>
        <translation>Cabeza</translation>
    </message>
    <message>
        <source>Tape</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Not taped yet.</source>
        <translation>Aún sin medir.</translation>
    </message>
    <message>
        <source>Readings of %1</source>
        <translation>Lecturas de %1</translation>
    </message>
</context>
<context>
    <name>HeadFront</name>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
</context>
<context>
    <name>HelmetCard</name>
    <message>
        <source>Helmet %1</source>
        <translation>Casco %1</translation>
    </message>
    <message>
        <source>Its page</source>
        <translation>Su página</translation>
    </message>
    <message>
        <source>Page of helmet %1</source>
        <translation>Página del casco %1</translation>
    </message>
</context>
<context>
    <name>HelmetsPage</name>
    <message>
        <source>Helmets</source>
        <translation>Cascos</translation>
    </message>
    <message>
        <source>%1 shown</source>
        <translation>%1 a la vista</translation>
    </message>
    <message>
        <source>No helmet here. Take one in at the Dock, or choose another filter.</source>
        <translation>Aquí no hay cascos. Reciba uno en Recepción, o elija otro filtro.</translation>
    </message>
    <message>
        <source>Serial or wearer</source>
        <translation>Serie o quien lo usa</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Maker&apos;s notice</source>
        <translation>Aviso del fabricante</translation>
    </message>
    <message>
        <source>Hold every helmet of a model, year, lot or serials at once</source>
        <translation>Retener a la vez todos los cascos de un modelo, año, lote o series</translation>
    </message>
</context>
<context>
    <name>HoldSheet</name>
    <message>
        <source>Hold this helmet</source>
        <translation>Retener este casco</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>waits for a part</source>
        <translation>espera una pieza</translation>
    </message>
    <message>
        <source>Waits for a part</source>
        <translation>Espera una pieza</translation>
    </message>
    <message>
        <source>to be cleaned</source>
        <translation>por limpiar</translation>
    </message>
    <message>
        <source>To be cleaned</source>
        <translation>Por limpiar</translation>
    </message>
    <message>
        <source>look again tomorrow</source>
        <translation>ver otra vez mañana</translation>
    </message>
    <message>
        <source>Look again tomorrow</source>
        <translation>Ver otra vez mañana</translation>
    </message>
    <message>
        <source>not ours</source>
        <translation>no es nuestro</translation>
    </message>
    <message>
        <source>Not ours</source>
        <translation>No es nuestro</translation>
    </message>
    <message>
        <source>Or in your own words</source>
        <translation>O con sus propias palabras</translation>
    </message>
    <message>
        <source>More words, if wanted</source>
        <translation>Más palabras, si hace falta</translation>
    </message>
    <message>
        <source>Hold, in our hands</source>
        <translation>Retener, en nuestras manos</translation>
    </message>
    <message>
        <source>Hold, still with the athlete</source>
        <translation>Retener, aún con quien lo usa</translation>
    </message>
</context>
<context>
    <name>Jersey</name>
    <message>
        <source>Jersey number</source>
        <translation>Número de camiseta</translation>
    </message>
    <message>
        <source>Nobody wears %1.</source>
        <translation>Nadie lleva el %1.</translation>
    </message>
</context>
<context>
    <name>Keypad</name>
    <message>
        <source>Enter</source>
        <translation>Aceptar</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Borrar todo</translation>
    </message>
    <message>
        <source>Erase last</source>
        <translation>Borrar el último</translation>
    </message>
    <message>
        <source>Decimal point</source>
        <translation>Punto decimal</translation>
    </message>
</context>
<context>
    <name>LabelChoice</name>
    <message>
        <source>Earlier</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Recertification label, year</source>
        <translation>Etiqueta de recertificación, año</translation>
    </message>
    <message>
        <source>New unit, maker&apos;s mark, year</source>
        <translation>Casco nuevo, marca del fabricante, año</translation>
    </message>
    <message>
        <source>Full date on paper</source>
        <translation>Fecha completa en papel</translation>
    </message>
    <message>
        <source>No label on it</source>
        <translation>No tiene etiqueta</translation>
    </message>
    <message>
        <source>Certified on, year-month-day</source>
        <translation>Certificado el, año-mes-día</translation>
    </message>
    <message>
        <source>Where it stands, such as the firm&apos;s list</source>
        <translation>Dónde consta, como la lista de la empresa</translation>
    </message>
    <message>
        <source>Use this date</source>
        <translation>Usar esta fecha</translation>
    </message>
    <message>
        <source>Cannot be read</source>
        <translation>No se puede leer</translation>
    </message>
</context>
<context>
    <name>LabelReading</name>
    <message>
        <source>Write the date as year-month-day, such as 2025-03-14.</source>
        <translation>Escriba la fecha como año-mes-día, por ejemplo 2025-03-14.</translation>
    </message>
    <message>
        <source>That date is still to come.</source>
        <translation>Esa fecha aún no llega.</translation>
    </message>
    <message>
        <source>Say where the full date stands, such as the firm&apos;s list.</source>
        <translation>Diga dónde consta la fecha completa, como la lista de la empresa.</translation>
    </message>
</context>
<context>
    <name>LadderStep</name>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>see again</source>
        <translation>ver otra vez</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>falla</translation>
    </message>
    <message>
        <source>open</source>
        <translation>pendiente</translation>
    </message>
</context>
<context>
    <name>LaneHead</name>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>plegada</translation>
    </message>
</context>
<context>
    <name>LanesPage</name>
    <message>
        <source>Lanes week by week</source>
        <translation>Carriles semana a semana</translation>
    </message>
    <message>
        <source>Reading the log</source>
        <translation>Leyendo el registro</translation>
    </message>
    <message>
        <source>Week before</source>
        <translation>Semana anterior</translation>
    </message>
    <message>
        <source>Week after</source>
        <translation>Semana siguiente</translation>
    </message>
</context>
<context>
    <name>LegalHolds</name>
    <message>
        <source>Legal hold</source>
        <translation>Retención legal</translation>
    </message>
    <message>
        <source>Legal hold on everybody</source>
        <translation>Retención legal sobre todas las personas</translation>
    </message>
    <message>
        <source>While one stands, no name is kept back.</source>
        <translation>Mientras haya una, no se oculta ningún nombre.</translation>
    </message>
    <message>
        <source>to end</source>
        <translation>por terminar</translation>
    </message>
    <message>
        <source>stands</source>
        <translation>vigente</translation>
    </message>
    <message>
        <source>Why it ends</source>
        <translation>Por qué termina</translation>
    </message>
    <message>
        <source>Reason of a new hold</source>
        <translation>Motivo de una retención nueva</translation>
    </message>
    <message>
        <source>End this hold</source>
        <translation>Terminar esta retención</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Retener</translation>
    </message>
</context>
<context>
    <name>Line</name>
    <message>
        <source>Line</source>
        <translation>Fila</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Entendido</translation>
    </message>
    <message>
        <source>Line check</source>
        <translation>Revisión en fila</translation>
    </message>
    <message>
        <source>Nobody is on the roster yet. Take one in under Book, Athletes.</source>
        <translation>Aún no hay nadie en el plantel. Cargue uno en Libro, Atletas.</translation>
    </message>
    <message>
        <source>Start the line</source>
        <translation>Empezar la fila</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Jersey number</source>
        <translation>Número de camiseta</translation>
    </message>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>See athlete now</source>
        <translation>Atender ya a esta persona</translation>
    </message>
</context>
<context>
    <name>LineCheck</name>
    <message>
        <source>Line check</source>
        <translation>Revisión en fila</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Entendido</translation>
    </message>
    <message>
        <source>Not in the line; see them one by one:</source>
        <translation>Fuera de la fila; véalos uno por uno:</translation>
    </message>
    <message>
        <source>Notes brow, straps and hold as seen in line. It is no full look: nine marks are not asked.</source>
        <translation>Anota frente, correas y sujeción como vistas en fila. No es un vistazo completo: no se preguntan las nueve marcas.</translation>
    </message>
    <message>
        <source>Back to the board</source>
        <translation>Volver al tablero</translation>
    </message>
    <message>
        <source>Brow, straps, hold</source>
        <translation>Frente, correas, sujeción</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>What is off?</source>
        <translation>¿Qué está mal?</translation>
    </message>
    <message>
        <source>Stands here after all</source>
        <translation>Sí está en la fila</translation>
    </message>
    <message>
        <source>Not here</source>
        <translation>No está</translation>
    </message>
    <message>
        <source>Nothing is noted; stays on the board</source>
        <translation>No se anota nada; sigue en el tablero</translation>
    </message>
</context>
<context>
    <name>Locked</name>
    <message>
        <source>Staff code</source>
        <translation>Código del personal</translation>
    </message>
    <message>
        <source>Whoever opens it signs from now on</source>
        <translation>Quien lo abre firma desde ahora</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abrir</translation>
    </message>
    <message>
        <source>Every code forgotten</source>
        <translation>Se olvidaron todos los códigos</translation>
    </message>
    <message>
        <source>Helmet bothering you? Show us where.</source>
        <translation>¿Te molesta el casco? Muéstranos dónde.</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Understood</source>
        <translation>Entendido</translation>
    </message>
</context>
<context>
    <name>MarkWords</name>
    <message>
        <source>crown</source>
        <translation>coronilla</translation>
    </message>
    <message>
        <source>sides and back</source>
        <translation>zona lateral y trasera</translation>
    </message>
    <message>
        <source>left jaw pad</source>
        <translation>carrillera izquierda</translation>
    </message>
    <message>
        <source>right jaw pad</source>
        <translation>carrillera derecha</translation>
    </message>
    <message>
        <source>crown pad</source>
        <translation>almohadilla de la coronilla</translation>
    </message>
    <message>
        <source>straps</source>
        <translation>correas</translation>
    </message>
    <message>
        <source>chin cup</source>
        <translation>mentonera</translation>
    </message>
    <message>
        <source>Brow gap</source>
        <translation>Altura sobre las cejas</translation>
    </message>
    <message>
        <source>Ear openings</source>
        <translation>Aberturas de los oídos</translation>
    </message>
    <message>
        <source>Base of the skull</source>
        <translation>Base del cráneo</translation>
    </message>
    <message>
        <source>Chin cup</source>
        <translation>Mentonera</translation>
    </message>
    <message>
        <source>Straps</source>
        <translation>Correas</translation>
    </message>
    <message>
        <source>Jaw pads</source>
        <translation>Carrilleras</translation>
    </message>
    <message>
        <source>Crown</source>
        <translation>Coronilla</translation>
    </message>
    <message>
        <source>Sides and back</source>
        <translation>Lados y parte trasera</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Sujeción</translation>
    </message>
    <message>
        <source>brow</source>
        <translation>frente</translation>
    </message>
    <message>
        <source>ears</source>
        <translation>oídos</translation>
    </message>
    <message>
        <source>nape</source>
        <translation>nuca</translation>
    </message>
    <message>
        <source>chin</source>
        <translation>mentón</translation>
    </message>
    <message>
        <source>jaw</source>
        <translation>mandíbula</translation>
    </message>
    <message>
        <source>sides</source>
        <translation>lados</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>sujeción</translation>
    </message>
    <message>
        <source>Where does the front edge sit?</source>
        <translation>¿Dónde queda el borde delantero?</translation>
    </message>
    <message>
        <source>Is the base of the skull covered?</source>
        <translation>¿Está cubierta la base del cráneo?</translation>
    </message>
    <message>
        <source>How does the chin cup sit?</source>
        <translation>¿Cómo queda la mentonera?</translation>
    </message>
    <message>
        <source>How does it meet the top of the head?</source>
        <translation>¿Cómo toca la parte alta de la cabeza?</translation>
    </message>
    <message>
        <source>How does it meet the sides and back?</source>
        <translation>¿Cómo toca los lados y la parte trasera?</translation>
    </message>
    <message>
        <source>Does the helmet hold?</source>
        <translation>¿Se sujeta el casco?</translation>
    </message>
    <message>
        <source>Drag the front edge to where it sits. Athlete looks straight ahead, chin strap done up.</source>
        <translation>Arrastre el borde delantero a donde queda. Mirada al frente, barboquejo abrochado.</translation>
    </message>
    <message>
        <source>Look from behind. The shell covers the base of the skull.</source>
        <translation>Mire desde atrás. La carcasa cubre la base del cráneo.</translation>
    </message>
    <message>
        <source>The cup sits centred on the point of the jaw, even on both sides.</source>
        <translation>La mentonera queda centrada en la punta del mentón, pareja en ambos lados.</translation>
    </message>
    <message>
        <source>Slide a finger along each cheek. Pads touch firmly, no gap, no pain.</source>
        <translation>Pase un dedo por cada mejilla. Las almohadillas tocan firmes, sin hueco, sin dolor.</translation>
    </message>
    <message>
        <source>Press down on the shell. Even contact on top, no pressure point.</source>
        <translation>Presione la carcasa hacia abajo. Contacto parejo arriba, sin puntos de presión.</translation>
    </message>
    <message>
        <source>Ask for pressure points round the sides and back.</source>
        <translation>Pregunte por puntos de presión en los lados y atrás.</translation>
    </message>
    <message>
        <source>Grip the shell, never the faceguard. Athlete braces: twist left and right, rock up and down. Forehead skin moves with it.</source>
        <translation>Sujete la carcasa, nunca la careta. Quien la lleva se pone firme: gire a izquierda y derecha, mueva arriba y abajo. La piel de la frente se mueve con ella.</translation>
    </message>
    <message>
        <source>On the mark</source>
        <translation>En su lugar</translation>
    </message>
    <message>
        <source>Sits high</source>
        <translation>Queda alto</translation>
    </message>
    <message>
        <source>Sits low</source>
        <translation>Queda bajo</translation>
    </message>
    <message>
        <source>On the canals</source>
        <translation>Sobre los canales</translation>
    </message>
    <message>
        <source>Too high</source>
        <translation>Muy altas</translation>
    </message>
    <message>
        <source>Too low</source>
        <translation>Muy bajas</translation>
    </message>
    <message>
        <source>Covered</source>
        <translation>Cubierta</translation>
    </message>
    <message>
        <source>Edge digs in</source>
        <translation>El borde se clava</translation>
    </message>
    <message>
        <source>Left bare</source>
        <translation>Descubierta</translation>
    </message>
    <message>
        <source>Centred, even</source>
        <translation>Centrada, pareja</translation>
    </message>
    <message>
        <source>Tight</source>
        <translation>Apretado</translation>
    </message>
    <message>
        <source>Slack</source>
        <translation>Flojo</translation>
    </message>
    <message>
        <source>Even, routed</source>
        <translation>Parejas, bien pasadas</translation>
    </message>
    <message>
        <source>Loose or outside</source>
        <translation>Flojas o por fuera</translation>
    </message>
    <message>
        <source>Touch both sides</source>
        <translation>Tocan ambos lados</translation>
    </message>
    <message>
        <source>Press</source>
        <translation>Presionan</translation>
    </message>
    <message>
        <source>Leave a gap</source>
        <translation>Dejan un hueco</translation>
    </message>
    <message>
        <source>Even contact</source>
        <translation>Contacto parejo</translation>
    </message>
    <message>
        <source>Presses</source>
        <translation>Presiona</translation>
    </message>
    <message>
        <source>Gap on top</source>
        <translation>Hueco arriba</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>Hueco</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Se sujeta</translation>
    </message>
    <message>
        <source>Hurts</source>
        <translation>Duele</translation>
    </message>
    <message>
        <source>Slides</source>
        <translation>Se desliza</translation>
    </message>
    <message>
        <source> on the left</source>
        <translation> a la izquierda</translation>
    </message>
    <message>
        <source> on the right</source>
        <translation> a la derecha</translation>
    </message>
    <message>
        <source>front pad gone or torn</source>
        <translation>almohadilla delantera faltante o desgarrada</translation>
    </message>
    <message>
        <source>ear openings ahead, behind or turned</source>
        <translation>aberturas de los oídos adelante, atrás o giradas</translation>
    </message>
    <message>
        <source>rear pad gone</source>
        <translation>falta la almohadilla trasera</translation>
    </message>
    <message>
        <source>chin cup off centre</source>
        <translation>mentonera descentrada</translation>
    </message>
    <message>
        <source>snap or strap gone</source>
        <translation>falta un broche o una correa</translation>
    </message>
    <message>
        <source>jaw pad gone</source>
        <translation>falta una carrillera</translation>
    </message>
    <message>
        <source>hold cannot be tried</source>
        <translation>la sujeción no se puede probar</translation>
    </message>
    <message>
        <source>hurts in the twist</source>
        <translation>duele al girar</translation>
    </message>
    <message>
        <source>slides</source>
        <translation>se desliza</translation>
    </message>
    <message>
        <source>slides in the twist</source>
        <translation>se desliza al girar</translation>
    </message>
    <message>
        <source>rolls off from behind</source>
        <translation>se sale desde atrás</translation>
    </message>
    <message>
        <source>drops when the crown is pressed</source>
        <translation>baja al presionar la coronilla</translation>
    </message>
    <message>
        <source>front edge sits high</source>
        <translation>el borde delantero queda alto</translation>
    </message>
    <message>
        <source>front edge sits low</source>
        <translation>el borde delantero queda bajo</translation>
    </message>
    <message>
        <source>ear openings too high</source>
        <translation>aberturas de los oídos muy altas</translation>
    </message>
    <message>
        <source>ear openings too low</source>
        <translation>aberturas de los oídos muy bajas</translation>
    </message>
    <message>
        <source>rear edge digs in</source>
        <translation>el borde trasero se clava</translation>
    </message>
    <message>
        <source>base of the skull bare</source>
        <translation>base del cráneo descubierta</translation>
    </message>
    <message>
        <source>chin cup tight</source>
        <translation>mentonera apretada</translation>
    </message>
    <message>
        <source>chin cup slack</source>
        <translation>mentonera floja</translation>
    </message>
    <message>
        <source>straps tight</source>
        <translation>correas apretadas</translation>
    </message>
    <message>
        <source>straps loose or over the bars</source>
        <translation>correas flojas o sobre las barras</translation>
    </message>
    <message>
        <source>jaw pads press</source>
        <translation>las carrilleras presionan</translation>
    </message>
    <message>
        <source>gap at the jaw pads</source>
        <translation>hueco en las carrilleras</translation>
    </message>
    <message>
        <source>crown presses</source>
        <translation>la coronilla presiona</translation>
    </message>
    <message>
        <source>gap on top</source>
        <translation>hueco arriba</translation>
    </message>
    <message>
        <source>sides press</source>
        <translation>los lados presionan</translation>
    </message>
    <message>
        <source>gap at the sides</source>
        <translation>hueco en los lados</translation>
    </message>
    <message>
        <source>%1 not seen</source>
        <translation>%1: sin ver</translation>
    </message>
    <message>
        <source>%1 snug</source>
        <translation>%1: ajusta bien</translation>
    </message>
    <message>
        <source>%1 tight</source>
        <translation>%1: aprieta</translation>
    </message>
    <message>
        <source>%1 loose</source>
        <translation>%1: queda flojo</translation>
    </message>
    <message>
        <source>something broke at the %1</source>
        <translation>algo se rompió, %1</translation>
    </message>
    <message>
        <source>Front pad gone or torn</source>
        <translation>Almohadilla delantera faltante o desgarrada</translation>
    </message>
    <message>
        <source>Openings ahead, behind or turned</source>
        <translation>Aberturas adelante, atrás o giradas</translation>
    </message>
    <message>
        <source>Rear pad gone</source>
        <translation>Falta la almohadilla trasera</translation>
    </message>
    <message>
        <source>Cup off centre</source>
        <translation>Mentonera descentrada</translation>
    </message>
    <message>
        <source>Cup worn or torn</source>
        <translation>Mentonera gastada o desgarrada</translation>
    </message>
    <message>
        <source>Snap or strap gone</source>
        <translation>Falta un broche o una correa</translation>
    </message>
    <message>
        <source>Jaw pad gone</source>
        <translation>Falta una carrillera</translation>
    </message>
    <message>
        <source>Crown does not hold air</source>
        <translation>La coronilla no retiene el aire</translation>
    </message>
    <message>
        <source>Crown pad gone or torn</source>
        <translation>Almohadilla de la coronilla faltante o desgarrada</translation>
    </message>
    <message>
        <source>Cannot be tried</source>
        <translation>No se puede probar</translation>
    </message>
    <message>
        <source>Both</source>
        <translation>Ambas</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>In the twist</source>
        <translation>Al girar</translation>
    </message>
    <message>
        <source>Rolls off from behind</source>
        <translation>Se sale desde atrás</translation>
    </message>
    <message>
        <source>Drops when pressed</source>
        <translation>Baja al presionar</translation>
    </message>
    <message>
        <source>From the front</source>
        <translation>De frente</translation>
    </message>
    <message>
        <source>From the side</source>
        <translation>De lado</translation>
    </message>
    <message>
        <source>Contact and hold</source>
        <translation>Contacto y sujeción</translation>
    </message>
    <message>
        <source>Brow, chin cup and straps: all snug?</source>
        <translation>Frente, mentonera y correas: ¿todo ajusta bien?</translation>
    </message>
    <message>
        <source>Ears, base of the skull and jaw pads: all snug?</source>
        <translation>Oídos, base del cráneo y carrilleras: ¿todo ajusta bien?</translation>
    </message>
    <message>
        <source>Crown, sides and hold: all snug?</source>
        <translation>Coronilla, lados y sujeción: ¿todo ajusta bien?</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>sin ver</translation>
    </message>
    <message>
        <source>snug</source>
        <translation>ajusta bien</translation>
    </message>
    <message>
        <source>over</source>
        <translation>de más</translation>
    </message>
    <message>
        <source>under</source>
        <translation>de menos</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>falla</translation>
    </message>
    <message>
        <source>Where are the ear openings, on both sides?</source>
        <translation>¿Dónde están las aberturas de los oídos, en ambos lados?</translation>
    </message>
    <message>
        <source>How do the straps sit, on both sides?</source>
        <translation>¿Cómo quedan las correas, en ambos lados?</translation>
    </message>
    <message>
        <source>How do the jaw pads meet both cheeks?</source>
        <translation>¿Cómo tocan las carrilleras ambas mejillas?</translation>
    </message>
    <message>
        <source>Walk round and look from both sides. The openings belong on the ear canals.</source>
        <translation>Dé la vuelta y mire desde ambos lados. Las aberturas van sobre los canales de los oídos.</translation>
    </message>
    <message>
        <source>Both sides: every snap done up, even tension, routed under the faceguard.</source>
        <translation>Ambos lados: todos los broches cerrados, tensión pareja, pasadas por debajo de la careta.</translation>
    </message>
    <message>
        <source>crown liner fails</source>
        <translation>falla el forro de la coronilla</translation>
    </message>
    <message>
        <source>side liner fails</source>
        <translation>falla el forro de los lados</translation>
    </message>
    <message>
        <source>Sides do not hold air</source>
        <translation>Los lados no retienen el aire</translation>
    </message>
    <message>
        <source>Side pad gone or torn</source>
        <translation>Falta la almohadilla lateral o está rota</translation>
    </message>
</context>
<context>
    <name>MatchingPage</name>
    <message>
        <source>Matching</source>
        <translation>Asignación</translation>
    </message>
    <message>
        <source>Who wears one that can be given</source>
        <translation>Quien usa uno que se puede dar</translation>
    </message>
    <message>
        <source>Keeps it</source>
        <translation>Lo conserva</translation>
    </message>
    <message>
        <source>All anew</source>
        <translation>Todo de nuevo</translation>
    </message>
    <message>
        <source>Touch to take this back</source>
        <translation>Toque para deshacer esto</translation>
    </message>
    <message>
        <source>Pin this pair</source>
        <translation>Fijar este par</translation>
    </message>
    <message>
        <source>Stays, whatever the others get</source>
        <translation>Queda, reciban lo que reciban los demás</translation>
    </message>
    <message>
        <source>Not this helmet</source>
        <translation>Este casco no</translation>
    </message>
    <message>
        <source>Another one for this head</source>
        <translation>Otro para esta cabeza</translation>
    </message>
    <message>
        <source>Open the athlete</source>
        <translation>Abrir atleta</translation>
    </message>
</context>
<context>
    <name>MissingPage</name>
    <message>
        <source>Missing</source>
        <translation>Faltan</translation>
    </message>
    <message>
        <source>Every helmet that is to come is in.</source>
        <translation>Están todos los cascos que debían llegar.</translation>
    </message>
    <message>
        <source>With athletes, %1</source>
        <translation>Con atletas, %1</translation>
    </message>
    <message>
        <source>Should be on the shelf, %1</source>
        <translation>Deberían estar en el estante, %1</translation>
    </message>
    <message>
        <source>Elsewhere, not counted as missing</source>
        <translation>En otro lugar, no cuentan como faltantes</translation>
    </message>
    <message>
        <source>It is here: hand it in</source>
        <translation>Está aquí: entregarlo</translation>
    </message>
    <message>
        <source>Mark it as lost, because</source>
        <translation>Marcarlo como perdido, porque</translation>
    </message>
    <message>
        <source>not handed in</source>
        <translation>no se entregó</translation>
    </message>
    <message>
        <source>Not handed in</source>
        <translation>No se entregó</translation>
    </message>
    <message>
        <source>the athlete lost it</source>
        <translation>se le perdió a quien lo usaba</translation>
    </message>
    <message>
        <source>The athlete lost it</source>
        <translation>El casco se le perdió a quien lo usaba</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>robado</translation>
    </message>
    <message>
        <source>Stolen</source>
        <translation>Robado</translation>
    </message>
    <message>
        <source>not found on the shelf</source>
        <translation>no está en el estante</translation>
    </message>
    <message>
        <source>Not found on the shelf</source>
        <translation>No está en el estante</translation>
    </message>
    <message>
        <source>Or in your own words</source>
        <translation>O con sus propias palabras</translation>
    </message>
    <message>
        <source>Mark it as lost</source>
        <translation>Marcarlo como perdido</translation>
    </message>
    <message>
        <source>The helmet&apos;s page</source>
        <translation>La página del casco</translation>
    </message>
    <message>
        <source>The athlete&apos;s page</source>
        <translation>La página de atleta</translation>
    </message>
</context>
<context>
    <name>NoticePage</name>
    <message>
        <source>Maker&apos;s notice</source>
        <translation>Aviso del fabricante</translation>
    </message>
    <message>
        <source>Holds every helmet it means, in one act</source>
        <translation>Retiene todos los cascos a los que se refiere, de una vez</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Lo que dice</translation>
    </message>
    <message>
        <source>Its date, if not today: year-month-day</source>
        <translation>Su fecha, si no es hoy: año-mes-día</translation>
    </message>
    <message>
        <source>Which helmets</source>
        <translation>Qué cascos</translation>
    </message>
    <message>
        <source>Model sheet</source>
        <translation>Ficha de modelo</translation>
    </message>
    <message>
        <source>Made in, from</source>
        <translation>Hecho desde el año</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>Serial from</source>
        <translation>Serie desde</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Held too: touch to leave them out</source>
        <translation>También retenidos: toque para dejarlos fuera</translation>
    </message>
    <message>
        <source>Left out: touch to hold them too</source>
        <translation>Dejados fuera: toque para retenerlos también</translation>
    </message>
    <message>
        <source>Hide them</source>
        <translation>Ocultarlos</translation>
    </message>
    <message>
        <source>Show them</source>
        <translation>Mostrarlos</translation>
    </message>
    <message>
        <source>On a head</source>
        <translation>En una cabeza</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Guardado</translation>
    </message>
    <message>
        <source>Hold %1</source>
        <translation>Retener %1</translation>
    </message>
    <message>
        <source>Hold the helmets it means</source>
        <translation>Retener los cascos a los que se refiere</translation>
    </message>
</context>
<context>
    <name>NumberEntry</name>
    <message>
        <source>Less: %1</source>
        <translation>Menos: %1</translation>
    </message>
    <message>
        <source>More: %1</source>
        <translation>Más: %1</translation>
    </message>
    <message>
        <source>in %1</source>
        <comment>another unit</comment>
        <translation>en %1</translation>
    </message>
    <message>
        <source>Show in %1 instead of %2</source>
        <translation>Mostrar en %1 en vez de %2</translation>
    </message>
</context>
<context>
    <name>PageFrame</name>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message>
        <source>%1 signs here. Somebody else takes over</source>
        <translation>Aquí firma %1. Otra persona toma el relevo</translation>
    </message>
</context>
<context>
    <name>PairPage</name>
    <message>
        <source>Who wears %1?</source>
        <translation>¿Quién usa %1?</translation>
    </message>
    <message>
        <source>Nobody matches.</source>
        <translation>Nadie coincide.</translation>
    </message>
    <message>
        <source>Jersey or name</source>
        <translation>Camiseta o nombre</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Where is %1 now?</source>
        <translation>¿Dónde está %1 ahora?</translation>
    </message>
    <message>
        <source>In our hands</source>
        <translation>En nuestras manos</translation>
    </message>
    <message>
        <source>Still with %1</source>
        <translation>Aún lo tiene %1</translation>
    </message>
</context>
<context>
    <name>PaperWords</name>
    <message>
        <source>Recovery sheet</source>
        <translation>Hoja de recuperación</translation>
    </message>
    <message>
        <source>%1. Made on %2.</source>
        <comment>team, date</comment>
        <translation>%1. Hecha el %2.</translation>
    </message>
    <message>
        <source>Snugline: opens the Book when every code is forgotten</source>
        <translation>Snugline: abre el Libro cuando se olvidan todos los códigos</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Para qué sirve</translation>
    </message>
    <message>
        <source>The key</source>
        <translation>La clave</translation>
    </message>
    <message>
        <source>How to use it</source>
        <translation>Cómo usarla</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Guárdela</translation>
    </message>
    <message>
        <source>Under lock and key, away from the tablet: with the school&apos;s keys, or in a sealed envelope with the athletic director. Whoever holds this sheet and the tablet can open the Book. Do not photograph it, and do not send it by mail or message.</source>
        <translation>Bajo llave, lejos de la tableta: con las llaves de la escuela o en un sobre cerrado en la dirección deportiva. Quien tenga esta hoja y la tableta puede abrir el Libro. No la fotografíe ni la envíe por correo o mensaje.</translation>
    </message>
    <message>
        <source>Nobody can read this key from the Book again. It stands here and nowhere else.</source>
        <translation>Nadie puede volver a leer esta clave en el Libro. Está aquí y en ninguna otra parte.</translation>
    </message>
    <message>
        <source>Yearly warning</source>
        <translation>Advertencia anual</translation>
    </message>
    <message>
        <source>%1, season %2. Printed on %3.</source>
        <comment>team, season, date</comment>
        <translation>%1, temporada %2. Impreso el %3.</translation>
    </message>
    <message>
        <source>Text %1</source>
        <comment>first characters of a hash</comment>
        <translation>Texto %1</translation>
    </message>
    <message>
        <source>Jersey number</source>
        <translation>Número de camiseta</translation>
    </message>
    <message>
        <source>Athlete: name and date</source>
        <translation>Atleta: nombre y fecha</translation>
    </message>
    <message>
        <source>Parent or guardian: name and date</source>
        <translation>Madre, padre o tutor/a: nombre y fecha</translation>
    </message>
    <message>
        <source>Seen by staff: initials and date</source>
        <translation>Visto por el personal: iniciales y fecha</translation>
    </message>
    <message>
        <source>%1. In their words: %2</source>
        <translation>%1. En sus palabras: %2</translation>
    </message>
    <message>
        <source>What was said was acknowledged</source>
        <translation>Se acusó recibo de lo dicho</translation>
    </message>
    <message>
        <source>What was said was acknowledged: %1</source>
        <translation>Se acusó recibo de lo dicho: %1</translation>
    </message>
    <message>
        <source>Record of one athlete</source>
        <translation>Registro de una persona</translation>
    </message>
    <message>
        <source>%1. Handed out on %2.</source>
        <comment>team, date</comment>
        <translation>%1. Entregado el %2.</translation>
    </message>
    <message>
        <source>Snugline: everything the Book holds about one athlete</source>
        <translation>Snugline: todo lo que el Libro guarda de una persona</translation>
    </message>
    <message>
        <source>Name kept back since %1</source>
        <translation>Nombre oculto desde el %1</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>jersey, name</comment>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>Born %1</source>
        <translation>Año de nacimiento: %1</translation>
    </message>
    <message>
        <source>What was said about how somebody feels is not part of this paper.</source>
        <translation>Lo que se dijo sobre cómo se siente alguien no es parte de este papel.</translation>
    </message>
    <message>
        <source>A record of equipment: what was seen, when and by whom. It says nothing about whether a person may play.</source>
        <translation>Un registro de equipo: qué se vio, cuándo y por quién. No dice nada sobre si una persona puede jugar.</translation>
    </message>
    <message>
        <source>Card of one helmet</source>
        <translation>Ficha de un casco</translation>
    </message>
    <message>
        <source>%1. Printed on %2.</source>
        <comment>team, date</comment>
        <translation>%1. Impreso el %2.</translation>
    </message>
    <message>
        <source>Snugline: card of helmet %1</source>
        <translation>Snugline: ficha del casco %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a serial, its model and size</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>A record of equipment: what was seen, when and by whom. No athlete is named on it.</source>
        <translation>Un registro de equipo: qué se vio, cuándo y por quién. No nombra a ningún atleta.</translation>
    </message>
    <message>
        <source>On hold</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>%1. Taken %2</source>
        <comment>what a photo shows, when</comment>
        <translation>%1. Tomada %2</translation>
    </message>
    <message>
        <source>%1. Its file is missing or was altered, so it is not shown</source>
        <translation>%1. Su archivo falta o fue alterado, así que no se muestra</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Lo que se hizo</translation>
    </message>
    <message>
        <source>When every admin&apos;s code is forgotten, this key lets one admin set a new code. It works once: a new key is made then, and this sheet is void.</source>
        <translation>Cuando se olvidaron los códigos de todas las personas responsables, esta clave permite que una de ellas ponga un código nuevo. Sirve una vez: entonces se hace una clave nueva y esta hoja queda anulada.</translation>
    </message>
    <message>
        <source>1. On the screen that asks for a staff code, touch &quot;Every code forgotten&quot;.
2. Type the key, group after group. A mistyped group is named.
3. Choose the admin and type a new code twice.
4. Print the new sheet and destroy this one.</source>
        <translation>1. En la pantalla que pide un código del personal, toque &quot;Se olvidaron todos los códigos&quot;.
2. Escriba la clave, grupo por grupo. Se nombra el grupo mal escrito.
3. Elija a la persona responsable y escriba un código nuevo dos veces.
4. Imprima la hoja nueva y destruya esta.</translation>
    </message>
    <message>
        <source>Wrong keys make the tablet wait longer and longer, as wrong codes do. An admin can make a new sheet at any time, under People; every sheet before it is void.</source>
        <translation>Las claves equivocadas hacen esperar a la tableta cada vez más, como los códigos equivocados. Una persona responsable puede hacer una hoja nueva cuando quiera, en Personas; toda hoja anterior queda anulada.</translation>
    </message>
    <message>
        <source>%1. It opens now, to be printed from there.</source>
        <translation>%1. Se abre ahora para imprimirlo desde ahí.</translation>
    </message>
    <message>
        <source>%1. Nothing on this device opens it: take the file to where you print.</source>
        <translation>%1. Nada en este dispositivo lo abre: lleve el archivo a donde imprime.</translation>
    </message>
</context>
<context>
    <name>PartWords</name>
    <message>
        <source>Brow, front edge of the shell</source>
        <translation>Frente, borde delantero de la carcasa</translation>
    </message>
    <message>
        <source>Ear opening</source>
        <translation>Abertura del oído</translation>
    </message>
    <message>
        <source>Left ear opening</source>
        <translation>Abertura del oído izquierdo</translation>
    </message>
    <message>
        <source>Right ear opening</source>
        <translation>Abertura del oído derecho</translation>
    </message>
    <message>
        <source>Nape, back edge of the shell</source>
        <translation>Nuca, borde trasero de la carcasa</translation>
    </message>
    <message>
        <source>Chin cup</source>
        <translation>Mentonera</translation>
    </message>
    <message>
        <source>Straps</source>
        <translation>Correas</translation>
    </message>
    <message>
        <source>Left straps</source>
        <translation>Correas izquierdas</translation>
    </message>
    <message>
        <source>Right straps</source>
        <translation>Correas derechas</translation>
    </message>
    <message>
        <source>Jaw pad</source>
        <translation>Carrillera</translation>
    </message>
    <message>
        <source>Left jaw pad</source>
        <translation>Carrillera izquierda</translation>
    </message>
    <message>
        <source>Right jaw pad</source>
        <translation>Carrillera derecha</translation>
    </message>
    <message>
        <source>Crown</source>
        <translation>Coronilla</translation>
    </message>
    <message>
        <source>Sides and back</source>
        <translation>Lados y parte trasera</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Lado izquierdo</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Lado derecho</translation>
    </message>
    <message>
        <source>Hold, the whole helmet</source>
        <translation>Sujeción, todo el casco</translation>
    </message>
    <message>
        <source>Certification label</source>
        <translation>Etiqueta de certificación</translation>
    </message>
    <message>
        <source>Exterior warning label</source>
        <translation>Etiqueta exterior de advertencia</translation>
    </message>
    <message>
        <source>Shell</source>
        <translation>Carcasa</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Herrajes</translation>
    </message>
    <message>
        <source>Faceguard</source>
        <translation>Careta</translation>
    </message>
    <message>
        <source>Chin strap</source>
        <translation>Barboquejo</translation>
    </message>
    <message>
        <source>Air port, crown</source>
        <translation>Válvula de aire, coronilla</translation>
    </message>
    <message>
        <source>Air port, sides</source>
        <translation>Válvula de aire, lados</translation>
    </message>
    <message>
        <source>Air port, left jaw pad</source>
        <translation>Válvula de aire, carrillera izquierda</translation>
    </message>
    <message>
        <source>Air port, right jaw pad</source>
        <translation>Válvula de aire, carrillera derecha</translation>
    </message>
    <message>
        <source>snug</source>
        <translation>ajusta bien</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>en buen estado</translation>
    </message>
    <message>
        <source>over</source>
        <translation>de más</translation>
    </message>
    <message>
        <source>under</source>
        <translation>de menos</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>falla</translation>
    </message>
    <message>
        <source>athlete says tight</source>
        <translation>se dijo que aprieta</translation>
    </message>
    <message>
        <source>athlete says loose</source>
        <translation>se dijo que queda flojo</translation>
    </message>
    <message>
        <source>athlete says broken</source>
        <translation>se dijo que se rompió</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>sin ver</translation>
    </message>
    <message>
        <source>Liner</source>
        <translation>Forro</translation>
    </message>
</context>
<context>
    <name>PastSeasonPage</name>
    <message>
        <source>Missing at the close, %1</source>
        <translation>Faltaban al cerrar, %1</translation>
    </message>
    <message>
        <source>None was noted as missing.</source>
        <translation>No se anotó ningún faltante.</translation>
    </message>
    <message>
        <source>Who had which helmet</source>
        <translation>Quién tuvo qué casco</translation>
    </message>
    <message>
        <source>It lies at %1</source>
        <translation>Está en %1</translation>
    </message>
    <message>
        <source>This table as a CSV file</source>
        <translation>Esta tabla como archivo CSV</translation>
    </message>
    <message>
        <source>The athlete&apos;s page</source>
        <translation>La página de atleta</translation>
    </message>
    <message>
        <source>The helmet&apos;s page</source>
        <translation>La página del casco</translation>
    </message>
</context>
<context>
    <name>PastSeasonsPage</name>
    <message>
        <source>Past seasons</source>
        <translation>Temporadas pasadas</translation>
    </message>
    <message>
        <source>Reading the log</source>
        <translation>Leyendo el registro</translation>
    </message>
</context>
<context>
    <name>People</name>
    <message>
        <source>Who signs?</source>
        <translation>¿Quién firma?</translation>
    </message>
    <message>
        <source>What is recorded here carries these initials.</source>
        <translation>Lo que se registre aquí lleva estas iniciales.</translation>
    </message>
    <message>
        <source>Say hands this glass to athletes. Set a code first: it is the only way back.</source>
        <translation>Dilo entrega esta pantalla a los atletas. Ponga antes un código: es el único camino de regreso.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2, no code yet</source>
        <translation>%1, %2, aún sin código</translation>
    </message>
    <message>
        <source>Set a code for %1</source>
        <translation>Poner un código para %1</translation>
    </message>
    <message>
        <source>Somebody new: name</source>
        <translation>Alguien nuevo: nombre</translation>
    </message>
    <message>
        <source>As</source>
        <translation>Como</translation>
    </message>
    <message>
        <source>Staff</source>
        <translation>Personal</translation>
    </message>
    <message>
        <source>gives out codes</source>
        <translation>da los códigos</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Agregar</translation>
    </message>
    <message>
        <source>Add and sign as this person</source>
        <translation>Agregar y firmar como esta persona</translation>
    </message>
    <message>
        <source>Recovery sheet</source>
        <translation>Hoja de recuperación</translation>
    </message>
    <message>
        <source>None was made yet: a forgotten code cannot be read from anywhere</source>
        <translation>Aún no se hizo ninguna: un código olvidado no se puede leer en ninguna parte</translation>
    </message>
    <message>
        <source>Role and mark of %1</source>
        <translation>Función y marca de %1</translation>
    </message>
    <message>
        <source>Helper</source>
        <translation>Ayudante</translation>
    </message>
    <message>
        <source>rechecks, puts on hold</source>
        <translation>revisa de nuevo, retiene</translation>
    </message>
    <message>
        <source>fits and swaps too</source>
        <translation>también ajusta y cambia</translation>
    </message>
    <message>
        <source>Admin</source>
        <translation>Responsable</translation>
    </message>
</context>
<context>
    <name>PersonRole</name>
    <message>
        <source>Role of %1</source>
        <translation>Función de %1</translation>
    </message>
    <message>
        <source>Helper</source>
        <translation>Ayudante</translation>
    </message>
    <message>
        <source>Staff</source>
        <translation>Personal</translation>
    </message>
    <message>
        <source>Admin</source>
        <translation>Responsable</translation>
    </message>
    <message>
        <source>Athletic trainer or designated health care professional: may close See athlete now</source>
        <translation>Entrenador atlético o entrenadora atlética (athletic trainer), o profesional de la salud designado: puede cerrar Atender ya a esta persona</translation>
    </message>
    <message>
        <source>Athletic trainer or designated health care professional</source>
        <translation>Entrenador atlético o entrenadora atlética (athletic trainer), o profesional de la salud designado</translation>
    </message>
    <message>
        <source>Yes</source>
        <translation>Sí</translation>
    </message>
    <message>
        <source>No</source>
        <translation>No</translation>
    </message>
</context>
<context>
    <name>PhoneHome</name>
    <message>
        <source>Choose the answer</source>
        <translation>Elegir la respuesta</translation>
    </message>
    <message>
        <source>Number %1</source>
        <translation>Número %1</translation>
    </message>
    <message>
        <source>This phone speaks for you alone</source>
        <translation>Este teléfono habla solo por ti</translation>
    </message>
    <message>
        <source>What came of what you said</source>
        <translation>Qué pasó con lo que dijiste</translation>
    </message>
    <message>
        <source>By file, without a network</source>
        <translation>Por archivo, sin red</translation>
    </message>
    <message>
        <source>Write the file for staff</source>
        <translation>Escribir el archivo para el personal</translation>
    </message>
    <message>
        <source>Take in the answer of the staff</source>
        <translation>Recibir la respuesta del personal</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Elegir un archivo</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Recibirlo</translation>
    </message>
    <message>
        <source>Helmet bothering you? Show us where.</source>
        <translation>¿Te molesta el casco? Muéstranos dónde.</translation>
    </message>
</context>
<context>
    <name>PhoneJoin</name>
    <message>
        <source>Join as an athlete</source>
        <translation>Unirse como atleta</translation>
    </message>
    <message>
        <source>Staff show you a code under your number</source>
        <translation>El personal te muestra un código con tu número</translation>
    </message>
    <message>
        <source>The code, as the letters stand</source>
        <translation>El código, letra por letra</translation>
    </message>
    <message>
        <source>The code is yours alone: whoever has it can speak for you. This phone then holds what you say, your next look and what came of it, and no name.</source>
        <translation>El código es solo tuyo: quien lo tenga puede hablar por ti. Desde entonces este teléfono guarda lo que dices, tu próximo vistazo y lo que resultó, y ningún nombre.</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Unirse</translation>
    </message>
</context>
<context>
    <name>PhonePage</name>
    <message>
        <source>Phone of their own</source>
        <translation>Teléfono propio</translation>
    </message>
    <message>
        <source>The code as a square to scan</source>
        <translation>El código como cuadro para escanear</translation>
    </message>
    <message>
        <source>Show it to this athlete only: whoever has it can speak for them. It joins one phone; a new code lets the phone before it go.</source>
        <translation>Muéstrelo solo a esta persona: quien lo tenga puede hablar por ella. Une un solo teléfono; un código nuevo deja fuera al teléfono anterior.</translation>
    </message>
    <message>
        <source>Show a new code</source>
        <translation>Mostrar un código nuevo</translation>
    </message>
    <message>
        <source>Take nothing more from that phone</source>
        <translation>No recibir nada más de ese teléfono</translation>
    </message>
</context>
<context>
    <name>PhoneWords</name>
    <message>
        <source>This is not a join code, or a letter of it is wrong. Ask staff for a new one.</source>
        <translation>Esto no es un código para unirse, o tiene una letra mal. Pide uno nuevo al personal.</translation>
    </message>
    <message>
        <source>This file was altered or is not whole. Nothing of it is taken.</source>
        <translation>Este archivo fue alterado o no está completo. No se toma nada de él.</translation>
    </message>
    <message>
        <source>This phone is not joined to anybody here. Nothing of it is taken; show the athlete a new code.</source>
        <translation>Este teléfono no está unido a nadie aquí. No se toma nada de él; muestre un código nuevo.</translation>
    </message>
    <message>
        <source>This file says something that its phone may not say. Nothing of it is taken.</source>
        <translation>Este archivo dice algo que su teléfono no puede decir. No se toma nada de él.</translation>
    </message>
    <message>
        <source>Two phones were joined by one code. Nothing of the second is taken; show the athlete a new code.</source>
        <translation>Dos teléfonos se unieron con un mismo código. No se toma nada del segundo; muestre un código nuevo.</translation>
    </message>
    <message>
        <source>This answer is for another phone or from other staff. Nothing of it is taken.</source>
        <translation>Esta respuesta es de otro teléfono o de otro personal. No se toma nada de ella.</translation>
    </message>
    <message>
        <source>This answer is older than the one that is here.</source>
        <translation>Esta respuesta es más vieja que la que ya está aquí.</translation>
    </message>
    <message>
        <source>This is not a file of an athlete&apos;s phone, or it was altered. Nothing of it is taken.</source>
        <translation>Esto no es un archivo del teléfono de un atleta, o fue alterado. No se toma nada de él.</translation>
    </message>
</context>
<context>
    <name>PhotoPage</name>
    <message>
        <source>Choose a picture of the helmet</source>
        <translation>Elija una imagen del casco</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.bmp *.webp *.heic)</source>
        <translation>Imágenes (*.jpg *.jpeg *.png *.bmp *.webp *.heic)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Photo of a fault</source>
        <translation>Foto de una falla</translation>
    </message>
    <message>
        <source>The picture, not kept yet</source>
        <translation>La imagen, aún sin guardar</translation>
    </message>
    <message>
        <source>What the camera sees</source>
        <translation>Lo que ve la cámara</translation>
    </message>
    <message>
        <source>Only the helmet in the picture: no person, no face, no name.</source>
        <translation>Solo el casco en la imagen: ninguna persona, ninguna cara, ningún nombre.</translation>
    </message>
    <message>
        <source>Leave the fault as it is: no prying, bending or cleaning. What the maker says about damage comes first.</source>
        <translation>Deje la falla como está: sin hacer palanca, doblar ni limpiar. Lo que dice el fabricante sobre los daños va primero.</translation>
    </message>
    <message>
        <source>The picture is being read.</source>
        <translation>Se está leyendo la imagen.</translation>
    </message>
    <message>
        <source>Use the camera</source>
        <translation>Usar la cámara</translation>
    </message>
    <message>
        <source>Choose a picture file</source>
        <translation>Elegir un archivo de imagen</translation>
    </message>
    <message>
        <source>This device has no way to choose a file.</source>
        <translation>Este dispositivo no tiene forma de elegir un archivo.</translation>
    </message>
    <message>
        <source>Place, time and camera are taken out of the picture before it is kept. It stays on this device, beside the Book.</source>
        <translation>El lugar, la hora y la cámara se quitan de la imagen antes de guardarla. Queda en este dispositivo, junto al Libro.</translation>
    </message>
    <message>
        <source>What it shows, if one of the points</source>
        <translation>Lo que muestra, si es uno de los puntos</translation>
    </message>
    <message>
        <source>In your words, if wanted</source>
        <translation>En sus palabras, si quiere</translation>
    </message>
    <message>
        <source>Camera off</source>
        <translation>Apagar la cámara</translation>
    </message>
    <message>
        <source>Take the picture</source>
        <translation>Tomar la foto</translation>
    </message>
    <message>
        <source>Look at it: is a person or a name in it?</source>
        <translation>Mírela: ¿sale una persona o un nombre?</translation>
    </message>
    <message>
        <source>Yes, throw it away</source>
        <translation>Sí, descartarla</translation>
    </message>
    <message>
        <source>No, keep it</source>
        <translation>No, guardarla</translation>
    </message>
</context>
<context>
    <name>PhotoShown</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Remove this photo</source>
        <translation>Eliminar esta foto</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarla</translation>
    </message>
    <message>
        <source>Its file is deleted from this device at once. Nothing brings it back, not even Undo.</source>
        <translation>Su archivo se borra de este dispositivo enseguida. Nada lo trae de vuelta, tampoco Deshacer.</translation>
    </message>
    <message>
        <source>The record keeps that a photo was taken, when, by whom, and the words to it.</source>
        <translation>El registro conserva que se tomó una foto, cuándo, por quién y las palabras que la acompañan.</translation>
    </message>
    <message>
        <source>A backup made before may still hold it. Delete it there too.</source>
        <translation>Un respaldo anterior puede tenerla todavía. Bórrelo allí también.</translation>
    </message>
    <message>
        <source>Delete it for good</source>
        <translation>Borrarla para siempre</translation>
    </message>
</context>
<context>
    <name>PhotoThumb</name>
    <message>
        <source>Photo, %1. %2</source>
        <translation>Foto, %1. %2</translation>
    </message>
    <message>
        <source>Photo, %1. Opens large</source>
        <translation>Foto, %1. Se abre en grande</translation>
    </message>
</context>
<context>
    <name>PhotoWords</name>
    <message>
        <source>The helmet</source>
        <translation>El casco</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a point, what is seen</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>taken %1</source>
        <translation>tomada %1</translation>
    </message>
    <message>
        <source>taken %1 by %2</source>
        <translation>tomada %1 por %2</translation>
    </message>
    <message>
        <source>%1 is not a picture that can be read here. Choose a JPEG or PNG file.</source>
        <translation>%1 no es una imagen que se pueda leer aquí. Elija un archivo JPEG o PNG.</translation>
    </message>
    <message>
        <source>%1 is damaged or cut short. Choose another picture.</source>
        <translation>%1 está dañado o incompleto. Elija otra imagen.</translation>
    </message>
    <message>
        <source>The camera has sent no picture yet. Wait a moment and take it again.</source>
        <translation>La cámara aún no ha enviado ninguna imagen. Espere un momento y tómela de nuevo.</translation>
    </message>
    <message>
        <source>The picture could not be freed of what else stands in it, so it was not kept.</source>
        <translation>No se pudo librar la imagen de lo demás que contiene, así que no se guardó.</translation>
    </message>
    <message>
        <source>This photo was altered since it was taken. It is not shown.</source>
        <translation>Esta foto fue alterada desde que se tomó. No se muestra.</translation>
    </message>
    <message>
        <source>The file of this photo is missing.</source>
        <translation>Falta el archivo de esta foto.</translation>
    </message>
    <message>
        <source>This very picture stands with %1 already.</source>
        <translation>Esta misma imagen ya está con %1.</translation>
    </message>
    <message>
        <source>A legal hold stands. No photo is deleted until it ends.</source>
        <translation>Hay una retención legal. No se borra ninguna foto hasta que termine.</translation>
    </message>
    <message>
        <source>%1 has more pixels than a picture of a camera. Choose another picture.</source>
        <translation>%1 tiene más píxeles que la imagen de una cámara. Elija otra imagen.</translation>
    </message>
    <message>
        <source>%1 is too large for a picture. Choose another one.</source>
        <translation>%1 es demasiado grande para una imagen. Elija otra.</translation>
    </message>
    <message>
        <source>The camera is starting.</source>
        <translation>La cámara se está encendiendo.</translation>
    </message>
    <message>
        <source>This device has no camera. Choose a picture file.</source>
        <translation>Este dispositivo no tiene cámara. Elija un archivo de imagen.</translation>
    </message>
    <message>
        <source>The camera may not be used. Allow it in the settings of this device, or choose a picture file.</source>
        <translation>No se permite usar la cámara. Permítala en los ajustes de este dispositivo o elija un archivo de imagen.</translation>
    </message>
    <message>
        <source>Another program has the camera. Close it there, or choose a picture file.</source>
        <translation>Otro programa tiene la cámara. Ciérrela allí o elija un archivo de imagen.</translation>
    </message>
    <message>
        <source>The camera stopped. Turn it on again, or choose a picture file.</source>
        <translation>La cámara se detuvo. Enciéndala de nuevo o elija un archivo de imagen.</translation>
    </message>
</context>
<context>
    <name>PlainWords</name>
    <message>
        <source>d MMM</source>
        <extracomment>Format of a date, see QLocale: day and short month; the second with the year.</extracomment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation>d MMM yyyy</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <translation>ddd d MMM</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>family name, given name</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>the end of a list</comment>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between the members of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>menos de 1 %</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>más de 99 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <comment>odds</comment>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Name kept back</source>
        <translation>Nombre oculto</translation>
    </message>
</context>
<context>
    <name>PlanPage</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Chance that a size is enough</source>
        <translation>Probabilidad de que una talla alcance</translation>
    </message>
    <message>
        <source>Athletes who come back</source>
        <translation>Atletas que vuelven</translation>
    </message>
    <message>
        <source>Away when sent out</source>
        <translation>Fuera cuando se envía</translation>
    </message>
    <message>
        <source>Short</source>
        <translation>Faltan</translation>
    </message>
    <message>
        <source>Order for the next season</source>
        <translation>Pedido para la próxima temporada</translation>
    </message>
    <message>
        <source>No size is known to be needed.</source>
        <translation>No se sabe de ninguna talla que haga falta.</translation>
    </message>
    <message>
        <source>What it costs is left to you.</source>
        <translation>Lo que cuesta queda a su criterio.</translation>
    </message>
    <message>
        <source>Send out</source>
        <translation>Enviar</translation>
    </message>
    <message>
        <source>Nothing to send out.</source>
        <translation>Nada que enviar.</translation>
    </message>
    <message>
        <source>What lapses</source>
        <translation>Lo que vence</translation>
    </message>
    <message>
        <source>Nothing lapses through the next season.</source>
        <translation>Nada vence hasta el fin de la próxima temporada.</translation>
    </message>
    <message>
        <source>Needed and good, by size</source>
        <translation>Necesarios y buenos, por talla</translation>
    </message>
    <message>
        <source>Certified at the start of each month</source>
        <translation>Certificados al comienzo de cada mes</translation>
    </message>
    <message>
        <source>As labels stand, by their earliest day, with nothing sent out.</source>
        <translation>Según las etiquetas de hoy, por su día más temprano, sin enviar nada.</translation>
    </message>
    <message>
        <source>What this rests on</source>
        <translation>En qué se basa esto</translation>
    </message>
    <message>
        <source>The maker&apos;s instructions and the rules of your league come first.</source>
        <translation>Primero van las instrucciones del fabricante y las reglas de su liga.</translation>
    </message>
</context>
<context>
    <name>PointTile</name>
    <message>
        <source>Fault</source>
        <translation>Falla</translation>
    </message>
    <message>
        <source>Not seen</source>
        <translation>Sin ver</translation>
    </message>
</context>
<context>
    <name>Privacy</name>
    <message>
        <source>Privacy</source>
        <translation>Privacidad</translation>
    </message>
    <message>
        <source>For the whole team</source>
        <translation>Para todo el equipo</translation>
    </message>
    <message>
        <source>Names of athletes who left are shown</source>
        <translation>Los nombres de quienes se fueron se muestran</translation>
    </message>
    <message>
        <source>Always</source>
        <translation>Siempre</translation>
    </message>
    <message>
        <source>%1 years</source>
        <translation>%1 años</translation>
    </message>
    <message>
        <source>Counted from the last entry about an athlete who is off the roster. After that views and papers leave the name out and say since when. The log still holds it: nothing in the Book is ever deleted, and whoever reads the file itself finds it. How long your school must keep records is for the school to say.</source>
        <translation>Se cuenta desde la última entrada sobre quien ya no está en el plantel. Después, pantallas y papeles omiten el nombre y dicen desde cuándo. El registro lo conserva: nada se borra del Libro, y quien lea el archivo mismo lo encuentra. Cuánto tiempo debe guardar registros su escuela lo dice la escuela.</translation>
    </message>
</context>
<context>
    <name>ProgressStrip</name>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
</context>
<context>
    <name>PullSheet</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>ReadAndSign</name>
    <message>
        <source>Yearly warning</source>
        <translation>Advertencia anual</translation>
    </message>
    <message>
        <source>Seen by staff</source>
        <translation>Visto por el personal</translation>
    </message>
    <message>
        <source>Number %1, for the parent or guardian to read and sign</source>
        <translation>Número %1, para que lea y firme la madre, el padre o quien es tutor/a</translation>
    </message>
    <message>
        <source>Number %1, to read and sign</source>
        <translation>Número %1, para leer y firmar</translation>
    </message>
    <message>
        <source>English</source>
        <translation>English</translation>
    </message>
    <message>
        <source>Español</source>
        <translation>Español</translation>
    </message>
    <message>
        <source>I saw it signed</source>
        <translation>Vi que se firmó</translation>
    </message>
    <message>
        <source>Give the tablet to staff. The code of whoever saw it signed makes it count.</source>
        <translation>Da la tableta al personal. Cuenta con el código de quien vio la firma.</translation>
    </message>
    <message>
        <source>Read to the end, then sign.</source>
        <translation>Lee hasta el final y luego firma.</translation>
    </message>
    <message>
        <source>Initials of the parent or guardian</source>
        <translation>Iniciales de la madre, el padre o quien es tutor/a</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>Tus iniciales</translation>
    </message>
    <message>
        <source>I have read this</source>
        <translation>He leído esto</translation>
    </message>
    <message>
        <source>I have read this and the label on my helmet</source>
        <translation>He leído esto y la etiqueta de mi casco</translation>
    </message>
    <message>
        <source>Not now: back to staff</source>
        <translation>Ahora no: de vuelta al personal</translation>
    </message>
</context>
<context>
    <name>ReadingsSheet</name>
    <message>
        <source>Why is it set aside?</source>
        <translation>¿Por qué se aparta?</translation>
    </message>
    <message>
        <source>Touch the reading that is wrong</source>
        <translation>Toque la lectura que está mal</translation>
    </message>
    <message>
        <source>%1. Touch: it counts again</source>
        <translation>%1. Tocar: vuelve a contar</translation>
    </message>
    <message>
        <source>It stays in the record and counts for nothing.</source>
        <translation>Queda en el registro y no cuenta para nada.</translation>
    </message>
</context>
<context>
    <name>Record</name>
    <message>
        <source>Whole record</source>
        <translation>Registro completo</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>What was said about how somebody feels is not shown and not handed out.</source>
        <translation>Lo que se dijo sobre cómo se siente alguien no se muestra ni se entrega.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>CSV</source>
        <translation>CSV</translation>
    </message>
    <message>
        <source>JSON</source>
        <translation>JSON</translation>
    </message>
</context>
<context>
    <name>Recovery</name>
    <message>
        <source>The next recovery sheet</source>
        <translation>La hoja de recuperación siguiente</translation>
    </message>
    <message>
        <source>New code for %1</source>
        <translation>Código nuevo para %1</translation>
    </message>
    <message>
        <source>The same code again</source>
        <translation>El mismo código otra vez</translation>
    </message>
    <message>
        <source>Every code forgotten</source>
        <translation>Se olvidaron todos los códigos</translation>
    </message>
    <message>
        <source>The %1 digits of the sheet made last</source>
        <translation>Los %1 dígitos de la última hoja</translation>
    </message>
    <message>
        <source>Back to the code</source>
        <translation>De vuelta al código</translation>
    </message>
    <message>
        <source>No recovery sheet was ever made for this Book. Its facts are not lost: they can be read with the program snug, and a backup can be restored. A code cannot be found out.</source>
        <translation>Nunca se hizo una hoja de recuperación para este Libro. Sus hechos no se pierden: se pueden leer con el programa snug, y una copia se puede restaurar. Un código no se puede averiguar.</translation>
    </message>
    <message>
        <source>Set this code</source>
        <translation>Poner este código</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>I keep it on paper</source>
        <translation>La guardo en papel</translation>
    </message>
    <message>
        <source>Which admin?</source>
        <translation>¿Qué responsable?</translation>
    </message>
</context>
<context>
    <name>RecoverySheet</name>
    <message>
        <source>Recovery sheet</source>
        <translation>Hoja de recuperación</translation>
    </message>
    <message>
        <source>None was made yet</source>
        <translation>Aún no se hizo ninguna</translation>
    </message>
    <message>
        <source>A new sheet makes every one before it void.</source>
        <translation>Una hoja nueva deja sin valor todas las anteriores.</translation>
    </message>
    <message>
        <source>Make a new sheet</source>
        <translation>Hacer una hoja nueva</translation>
    </message>
    <message>
        <source>Make the sheet</source>
        <translation>Hacer la hoja</translation>
    </message>
    <message>
        <source>I keep it on paper</source>
        <translation>La guardo en papel</translation>
    </message>
    <message>
        <source>When every admin&apos;s code is forgotten, the key on this sheet lets one admin set a new one. It works once. Without it a forgotten code locks the app for good.</source>
        <translation>Cuando se olvidaron los códigos de todas las personas responsables, la clave de esta hoja permite que una de ellas ponga uno nuevo. Sirve una vez. Sin ella, un código olvidado bloquea la aplicación para siempre.</translation>
    </message>
</context>
<context>
    <name>RedWay</name>
    <message>
        <source>Headache? Dizzy? Took a hit?</source>
        <translation>¿Dolor de cabeza? ¿Mareo? ¿Un golpe?</translation>
    </message>
</context>
<context>
    <name>ReturnSheet</name>
    <message>
        <source>Back with us</source>
        <translation>De vuelta con nosotros</translation>
    </message>
    <message>
        <source>As the one before</source>
        <translation>Como el anterior</translation>
    </message>
    <message>
        <source>Who put it right?</source>
        <translation>¿Quién lo arregló?</translation>
    </message>
    <message>
        <source>We did</source>
        <translation>Nosotros</translation>
    </message>
    <message>
        <source>A workshop</source>
        <translation>Un taller</translation>
    </message>
    <message>
        <source>The recertifying firm</source>
        <translation>La empresa que recertifica</translation>
    </message>
    <message>
        <source>Its maker</source>
        <translation>Su fabricante</translation>
    </message>
    <message>
        <source>What was done?</source>
        <translation>¿Qué se hizo?</translation>
    </message>
    <message>
        <source>recertified</source>
        <translation>recertificado</translation>
    </message>
    <message>
        <source>faceguard replaced</source>
        <translation>careta cambiada</translation>
    </message>
    <message>
        <source>hardware replaced</source>
        <translation>herrajes cambiados</translation>
    </message>
    <message>
        <source>liner or air replaced</source>
        <translation>forro o aire cambiado</translation>
    </message>
    <message>
        <source>chin strap replaced</source>
        <translation>barboquejo cambiado</translation>
    </message>
    <message>
        <source>shell replaced</source>
        <translation>carcasa cambiada</translation>
    </message>
    <message>
        <source>Or in your own words</source>
        <translation>O con sus palabras</translation>
    </message>
    <message>
        <source>On which paper, if any</source>
        <translation>En qué papel, si lo hay</translation>
    </message>
    <message>
        <source>On which paper</source>
        <translation>En qué papel</translation>
    </message>
    <message>
        <source>Cleaned?</source>
        <translation>¿Limpio?</translation>
    </message>
    <message>
        <source>Cleaned</source>
        <translation>Limpio</translation>
    </message>
    <message>
        <source>Not cleaned yet</source>
        <translation>Aún sin limpiar</translation>
    </message>
    <message>
        <source>Everything on it counts as not checked from now on.</source>
        <translation>Desde ahora todo en él cuenta como sin revisar.</translation>
    </message>
    <message>
        <source>It is back</source>
        <translation>Ya volvió</translation>
    </message>
</context>
<context>
    <name>RosterPage</name>
    <message>
        <source>Refused</source>
        <translation>Rechazados</translation>
    </message>
    <message>
        <source>Questioned</source>
        <translation>Dudosos</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Cambiados</translation>
    </message>
    <message>
        <source>Added</source>
        <translation>Agregados</translation>
    </message>
    <message>
        <source>Choose a roster file</source>
        <translation>Elegir un archivo de plantel</translation>
    </message>
    <message>
        <source>Rosters (*.csv *.tsv *.txt)</source>
        <translation>Planteles (*.csv *.tsv *.txt)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Take a roster in</source>
        <translation>Cargar un plantel</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>A CSV file, as any spreadsheet writes it</source>
        <translation>Un archivo CSV, como lo escribe cualquier hoja de cálculo</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Elegir un archivo</translation>
    </message>
    <message>
        <source>Read this file</source>
        <translation>Leer este archivo</translation>
    </message>
    <message>
        <source>%1 to add, %2 to change, %3 unchanged</source>
        <translation>%1 por agregar, %2 por cambiar, %3 sin cambios</translation>
    </message>
    <message>
        <source>%1 questioned, %2 refused. Refused rows stay out; the others go in.</source>
        <translation>%1 dudosos, %2 rechazados. Los renglones rechazados quedan fuera; los demás entran.</translation>
    </message>
    <message>
        <source>Nothing is written yet.</source>
        <translation>Aún no se escribe nada.</translation>
    </message>
    <message>
        <source>Line %1</source>
        <translation>Renglón %1</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>renglón %1</translation>
    </message>
    <message>
        <source>Put aside</source>
        <translation>Poner a un lado</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Cargarlo</translation>
    </message>
    <message>
        <source>%1 questioned, each to be answered below.</source>
        <translation>%1 dudosos; cada uno se contesta abajo.</translation>
    </message>
    <message>
        <source>Is it right?</source>
        <translation>¿Está bien?</translation>
    </message>
    <message>
        <source>%1 not answered: in doubt it stays out</source>
        <translation>%1 sin contestar: en la duda queda fuera</translation>
    </message>
</context>
<context>
    <name>SaidWords</name>
    <message>
        <source>%1 one step thinner</source>
        <comment>a pad</comment>
        <translation>%1 un paso más delgada</translation>
    </message>
    <message>
        <source>%1 one step thicker</source>
        <comment>a pad</comment>
        <translation>%1 un paso más gruesa</translation>
    </message>
    <message>
        <source>%1 swapped</source>
        <comment>a pad</comment>
        <translation>%1 cambiada</translation>
    </message>
    <message>
        <source>%1 swapped</source>
        <comment>a part</comment>
        <translation>%1 cambiada</translation>
    </message>
    <message>
        <source>%1 thinner, %2</source>
        <comment>a pad, its thickness</comment>
        <translation>%1 más delgada, %2</translation>
    </message>
    <message>
        <source>%1 thicker, %2</source>
        <comment>a pad, its thickness</comment>
        <translation>%1 más gruesa, %2</translation>
    </message>
    <message>
        <source>%1 now %2</source>
        <comment>a pad, its thickness</comment>
        <translation>%1 ahora de %2</translation>
    </message>
    <message>
        <source>straps longer</source>
        <translation>correas más largas</translation>
    </message>
    <message>
        <source>straps shorter</source>
        <translation>correas más cortas</translation>
    </message>
    <message>
        <source>straps set even</source>
        <translation>correas parejas</translation>
    </message>
    <message>
        <source>second time since %1</source>
        <comment>a day</comment>
        <translation>segunda vez desde el %1</translation>
    </message>
    <message>
        <source>third time since %1</source>
        <comment>a day</comment>
        <translation>tercera vez desde el %1</translation>
    </message>
    <message>
        <source>fourth time since %1</source>
        <comment>a day</comment>
        <translation>cuarta vez desde el %1</translation>
    </message>
    <message>
        <source>fifth time since %1</source>
        <comment>a day</comment>
        <translation>quinta vez desde el %1</translation>
    </message>
    <message numerus="yes">
        <source>%n times since %1</source>
        <comment>a day</comment>
        <translation>
            <numerusform>%n vez desde el %1</numerusform>
            <numerusform>%n veces desde el %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 on the left</source>
        <comment>a mark</comment>
        <translation>%1 a la izquierda</translation>
    </message>
    <message>
        <source>%1 on the right</source>
        <comment>a mark</comment>
        <translation>%1 a la derecha</translation>
    </message>
    <message>
        <source>more air in the %1</source>
        <comment>a bladder</comment>
        <translation>más aire en la %1</translation>
    </message>
    <message>
        <source>less air in the %1</source>
        <comment>a bladder</comment>
        <translation>menos aire en la %1</translation>
    </message>
    <message>
        <source>straps rerouted</source>
        <translation>correas pasadas de nuevo</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message>
        <source>dddd</source>
        <extracomment>Format of a date, see QLocale: the weekday&apos;s name.</extracomment>
        <translation>&apos;el&apos; dddd</translation>
    </message>
    <message>
        <source>Seen %1: %2.</source>
        <comment>day, what was done</comment>
        <translation>Visto %1: %2.</translation>
    </message>
    <message>
        <source>Now: %1.</source>
        <comment>what was found</comment>
        <translation>Ahora, %1.</translation>
    </message>
    <message>
        <source>Seen %1.</source>
        <comment>day</comment>
        <translation>Visto %1.</translation>
    </message>
    <message>
        <source>Seen %1: %2, nothing to change.</source>
        <comment>day, what was found</comment>
        <translation>Visto %1; %2; nada que cambiar.</translation>
    </message>
    <message>
        <source>Seen %1: %2.</source>
        <comment>day, what was found</comment>
        <translation>Visto %1; %2.</translation>
    </message>
    <message>
        <source>You have another helmet since.</source>
        <translation>Desde entonces tienes otro casco.</translation>
    </message>
    <message>
        <source>Do not wear that helmet.</source>
        <translation>No uses ese casco.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>who or what model, a place</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>One model</source>
        <translation>Un modelo</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>jersey, name</comment>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>Said by %n athletes, %1 to %2</source>
        <comment>first and last day</comment>
        <translation>
            <numerusform>Dicho por %n atleta, del %1 al %2</numerusform>
            <numerusform>Dicho por %n atletas, del %1 al %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Said on %n days, %1 to %2</source>
        <comment>first and last day</comment>
        <translation>
            <numerusform>Dicho en %n día, del %1 al %2</numerusform>
            <numerusform>Dicho en %n días, del %1 al %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>tight %n times</source>
        <translation>
            <numerusform>aprieta %n vez</numerusform>
            <numerusform>aprieta %n veces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>loose %n times</source>
        <translation>
            <numerusform>queda flojo %n vez</numerusform>
            <numerusform>queda flojo %n veces</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>how often, how it felt</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Numbers %1</source>
        <comment>of jerseys</comment>
        <translation>Números %1</translation>
    </message>
    <message>
        <source>Not all of it is seen yet</source>
        <translation>Aún no se ha visto todo</translation>
    </message>
    <message>
        <source>Your helmet was checked %1.</source>
        <comment>day</comment>
        <translation>Revisaron tu casco %1.</translation>
    </message>
    <message>
        <source>Your helmet was checked %1: %2.</source>
        <comment>day, what was done</comment>
        <translation>Revisaron tu casco %1: %2.</translation>
    </message>
</context>
<context>
    <name>SayNumber</name>
    <message>
        <source>Your jersey number</source>
        <translation>Tu número de camiseta</translation>
    </message>
    <message>
        <source>Staff</source>
        <translation>Personal</translation>
    </message>
    <message>
        <source>Nobody here wears %1. Look at your jersey, or ask staff.</source>
        <translation>Aquí nadie lleva el %1. Mira tu camiseta o pregunta al personal.</translation>
    </message>
    <message>
        <source>Helmet bothering you? Show us where.</source>
        <translation>¿Te molesta el casco? Muéstranos dónde.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
</context>
<context>
    <name>SaySaid</name>
    <message>
        <source>Thank you, %1</source>
        <translation>Gracias, %1</translation>
    </message>
    <message>
        <source>It is recorded</source>
        <translation>Quedó registrado</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Another place</source>
        <translation>Otro lugar</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Retirarlo</translation>
    </message>
</context>
<context>
    <name>SayStop</name>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Touched by mistake</source>
        <translation>Lo toqué sin querer</translation>
    </message>
    <message>
        <source>Tell the athletic trainer now.</source>
        <translation>Avísale ya al entrenador atlético o a la entrenadora atlética (athletic trainer).</translation>
    </message>
    <message>
        <source>I told an adult</source>
        <translation>Ya le avisé a un adulto</translation>
    </message>
</context>
<context>
    <name>SayWhere</name>
    <message>
        <source>Not me: begin again</source>
        <translation>No soy yo: empezar de nuevo</translation>
    </message>
    <message>
        <source>The helmet from the front</source>
        <translation>El casco de frente</translation>
    </message>
    <message>
        <source>The helmet from the side</source>
        <translation>El casco de lado</translation>
    </message>
    <message>
        <source>&quot;%1&quot;</source>
        <translation>&quot;%1&quot;</translation>
    </message>
    <message>
        <source>Something broke</source>
        <translation>Algo se rompió</translation>
    </message>
    <message>
        <source>Hair changed</source>
        <translation>Cambió el cabello</translation>
    </message>
    <message>
        <source>Change words</source>
        <translation>Cambiar palabras</translation>
    </message>
    <message>
        <source>Add words</source>
        <translation>Agregar palabras</translation>
    </message>
    <message>
        <source>Not me</source>
        <translation>No soy yo</translation>
    </message>
    <message>
        <source>Tight or pinches</source>
        <translation>Aprieta o pellizca</translation>
    </message>
    <message>
        <source>Loose or moves</source>
        <translation>Flojo o se mueve</translation>
    </message>
</context>
<context>
    <name>SayWho</name>
    <message>
        <source>Number %1</source>
        <translation>Número %1</translation>
    </message>
    <message>
        <source>Which are you?</source>
        <translation>¿Quién eres?</translation>
    </message>
    <message>
        <source>Begin again</source>
        <translation>Empezar de nuevo</translation>
    </message>
</context>
<context>
    <name>SayWords</name>
    <message>
        <source>In your own words, if you like</source>
        <translation>Con tus propias palabras, si quieres</translation>
    </message>
    <message>
        <source>Back without words</source>
        <translation>Volver sin palabras</translation>
    </message>
    <message>
        <source>About the helmet</source>
        <translation>Sobre el casco</translation>
    </message>
    <message>
        <source>Save these words</source>
        <translation>Guardar estas palabras</translation>
    </message>
</context>
<context>
    <name>ScanField</name>
    <message>
        <source>Tag</source>
        <translation>Placa</translation>
    </message>
    <message>
        <source>Next tag</source>
        <translation>Siguiente placa</translation>
    </message>
    <message>
        <source>Scan or type a tag</source>
        <translation>Escanee o escriba una placa</translation>
    </message>
    <message>
        <source>Serial tag</source>
        <translation>Placa de serie</translation>
    </message>
</context>
<context>
    <name>SeasonOpenPage</name>
    <message>
        <source>The next season</source>
        <translation>La próxima temporada</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>First day: year-month-day</source>
        <translation>Primer día: año-mes-día</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Último día</translation>
    </message>
    <message>
        <source>Call it %1</source>
        <translation>Llamarla %1</translation>
    </message>
    <message>
        <source>Who leaves</source>
        <translation>Quiénes se van</translation>
    </message>
    <message>
        <source>A touch on an athlete takes them off the roster when the season is opened; one more touch keeps them. Their record stays.</source>
        <translation>Un toque quita a esa persona del plantel al abrir la temporada; otro toque la conserva. Su registro se queda.</translation>
    </message>
    <message>
        <source>Leaves</source>
        <translation>Se va</translation>
    </message>
    <message>
        <source>What is carried over</source>
        <translation>Lo que pasa a la próxima</translation>
    </message>
    <message>
        <source>By model and size, without lost ones</source>
        <translation>Por modelo y talla, sin los perdidos</translation>
    </message>
    <message>
        <source>Every helmet needs a first fit again when it is given out, also one that an athlete kept.</source>
        <translation>Todo casco necesita otra vez un primer ajuste al asignarse, también el que alguien conservó.</translation>
    </message>
</context>
<context>
    <name>SeasonPage</name>
    <message>
        <source>Season</source>
        <translation>Temporada</translation>
    </message>
    <message>
        <source>Said again and again</source>
        <translation>Dicho una y otra vez</translation>
    </message>
    <message>
        <source>Nothing so far.</source>
        <translation>Nada hasta ahora.</translation>
    </message>
    <message>
        <source>Matching</source>
        <translation>Asignación</translation>
    </message>
    <message>
        <source>Heads to helmets for the whole roster, and what is short</source>
        <translation>Cabezas y cascos de todo el plantel, y lo que falta</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>What lapses, what goes out, what to order</source>
        <translation>Qué vence, qué se envía, qué pedir</translation>
    </message>
    <message>
        <source>The seven points, as last seen</source>
        <translation>Los siete puntos, como se vieron por última vez</translation>
    </message>
    <message>
        <source>From a fit to the first look</source>
        <translation>Del ajuste al primer vistazo</translation>
    </message>
    <message>
        <source>Lanes week by week</source>
        <translation>Carriles semana a semana</translation>
    </message>
    <message>
        <source>Helmets by the lane they stood in, over the season</source>
        <translation>Cascos según el carril en que estaban, a lo largo de la temporada</translation>
    </message>
    <message>
        <source>Hand helmets in</source>
        <translation>Entrega de cascos</translation>
    </message>
    <message>
        <source>One scan after another, and what is missing</source>
        <translation>Una lectura tras otra, y lo que falta</translation>
    </message>
    <message>
        <source>Turn of the season</source>
        <translation>Cambio de temporada</translation>
    </message>
    <message>
        <source>Past seasons</source>
        <translation>Temporadas pasadas</translation>
    </message>
    <message>
        <source>Who had which helmet, and what was missing</source>
        <translation>Quién tuvo qué casco, y qué faltaba</translation>
    </message>
</context>
<context>
    <name>SeasonTurnPage</name>
    <message>
        <source>No season is open. No looks are due, and nobody is asked for a helmet. Helmets still with athletes stay on the Line.</source>
        <translation>No hay temporada abierta. No toca ningún vistazo ni se le pide casco a nadie. Los cascos que aún tienen atletas siguen en la Fila.</translation>
    </message>
    <message>
        <source>Helmets</source>
        <translation>Cascos</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguno</translation>
    </message>
    <message>
        <source>%1, touch to hide them</source>
        <translation>%1, tocar para ocultar</translation>
    </message>
    <message>
        <source>%1, touch to see who</source>
        <translation>%1, tocar para ver quiénes</translation>
    </message>
    <message>
        <source>Closing changes no helmet and no athlete. What is still missing is named in it, and everything above stays open.</source>
        <translation>Cerrar no cambia ningún casco ni a nadie. Lo que aún falta queda nombrado, y todo lo de arriba sigue abierto.</translation>
    </message>
    <message>
        <source>Take the closing back</source>
        <translation>Deshacer el cierre</translation>
    </message>
    <message>
        <source>%1 runs again</source>
        <translation>%1 sigue en curso</translation>
    </message>
    <message>
        <source>Close this season</source>
        <translation>Cerrar esta temporada</translation>
    </message>
    <message>
        <source>Close %1</source>
        <translation>Cerrar %1</translation>
    </message>
    <message>
        <source>Open the next season</source>
        <translation>Abrir la próxima temporada</translation>
    </message>
    <message>
        <source>Its days, and who stays</source>
        <translation>Sus días, y quiénes se quedan</translation>
    </message>
</context>
<context>
    <name>SeasonWords</name>
    <message>
        <source>Size odds</source>
        <translation>Probabilidad de la talla</translation>
    </message>
    <message>
        <source>Odds so low that it is tried on first</source>
        <translation>Probabilidad tan baja que primero se prueba</translation>
    </message>
    <message>
        <source>Not the last helmet: a new first fit</source>
        <translation>No es el último casco: un primer ajuste nuevo</translation>
    </message>
    <message>
        <source>The last helmet of somebody else</source>
        <translation>El último casco de otra persona</translation>
    </message>
    <message>
        <source>This model and size did not fit at the last check</source>
        <translation>Este modelo y talla no quedó bien en la última revisión</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) not seen</source>
        <translation>
            <numerusform>%n punto sin ver</numerusform>
            <numerusform>%n puntos sin ver</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n year(s) since its first label</source>
        <translation>
            <numerusform>%n año desde su primera etiqueta</numerusform>
            <numerusform>%n años desde su primera etiqueta</numerusform>
        </translation>
    </message>
    <message>
        <source>off the charts</source>
        <translation>fuera de las tablas</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>model, size</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>unknown model</source>
        <translation>modelo desconocido</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>how many, of what</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>odds %1</source>
        <translation>probabilidad %1</translation>
    </message>
    <message>
        <source>never taped</source>
        <translation>nunca medida</translation>
    </message>
    <message>
        <source>by a stale tape</source>
        <translation>con una medida vieja</translation>
    </message>
    <message>
        <source>try on</source>
        <translation>por probar</translation>
    </message>
    <message>
        <source>the last helmet</source>
        <translation>el último casco</translation>
    </message>
    <message>
        <source>pinned</source>
        <translation>fijado</translation>
    </message>
    <message>
        <source>%1, %2. %3</source>
        <comment>serial, model and size, what speaks for it</comment>
        <translation>%1, %2. %3</translation>
    </message>
    <message>
        <source>Never taped: no size is known</source>
        <translation>Nunca medida: no se conoce la talla</translation>
    </message>
    <message>
        <source>No size of the models at hand is likely enough</source>
        <translation>Ninguna talla de los modelos disponibles es bastante probable</translation>
    </message>
    <message>
        <source>No helmet that can be given is of size %1 or near it</source>
        <translation>Ningún casco que se pueda dar es de talla %1 ni cercana</translation>
    </message>
    <message>
        <source>Fewer helmets than heads of size %1</source>
        <translation>Menos cascos que cabezas de talla %1</translation>
    </message>
    <message>
        <source>Only helmets that were set aside or did not fit at the last check</source>
        <translation>Solo cascos apartados o que no quedaron bien en la última revisión</translation>
    </message>
    <message>
        <source>%1, by a stale tape</source>
        <translation>%1, con una medida vieja</translation>
    </message>
    <message>
        <source>lapsed, or may have</source>
        <translation>vencidos, o quizá vencidos</translation>
    </message>
    <message>
        <source>in this season</source>
        <translation>en esta temporada</translation>
    </message>
    <message>
        <source>between the seasons</source>
        <translation>entre las temporadas</translation>
    </message>
    <message>
        <source>in the next season</source>
        <translation>en la próxima temporada</translation>
    </message>
    <message>
        <source>%1 returning and %2 new heads expected. %3 helmets are enough with a chance of %4 (asked %5); %6 of ours are good through the next season, once renewed.</source>
        <translation>Se esperan %1 cabezas que vuelven y %2 nuevas. %3 cascos alcanzan con una probabilidad de %4 (pedida: %5); %6 de los nuestros sirven hasta el fin de la próxima temporada, una vez renovados.</translation>
    </message>
    <message numerus="yes">
        <source>%n more not counted: on hold, in repair, out of service or unread.</source>
        <translation>
            <numerusform>%n más sin contar: retenido, en reparación, fuera de servicio o sin leer.</numerusform>
            <numerusform>%n más sin contar: retenidos, en reparación, fuera de servicio o sin leer.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Season %1 taken as %2, the next on the same days a year later.</source>
        <translation>Temporada %1 tomada como %2; la próxima, en los mismos días un año después.</translation>
    </message>
    <message>
        <source>Season %1: %2, the next on the same days a year later.</source>
        <translation>Temporada %1: %2; la próxima, en los mismos días un año después.</translation>
    </message>
    <message numerus="yes">
        <source>A helmet that goes out is away for %n days. Its new label is judged by the year in which it comes back.</source>
        <translation>
            <numerusform>Un casco enviado está fuera %n día. Su nueva etiqueta se juzga por el año en que vuelve.</numerusform>
            <numerusform>Un casco enviado está fuera %n días. Su nueva etiqueta se juzga por el año en que vuelve.</numerusform>
        </translation>
    </message>
    <message>
        <source>Each head returns with a chance of %1, none past age %2 (%3 are past it).</source>
        <translation>Cada cabeza vuelve con una probabilidad de %1, ninguna después de los %2 años (%3 los pasan).</translation>
    </message>
    <message>
        <source>%1 newcomers expected, with heads of %2-year-olds, in %3.</source>
        <translation>Se esperan %1 nuevos, con cabezas de %2 años, en %3.</translation>
    </message>
    <message>
        <source>no model known</source>
        <translation>ningún modelo conocido</translation>
    </message>
    <message>
        <source>Heads grow %1 mm a year through age %2, with a spread of %3 mm (Dutch boys 1997).</source>
        <translation>Las cabezas crecen %1 mm al año hasta los %2 años, con una dispersión de %3 mm (niños neerlandeses, 1997).</translation>
    </message>
    <message numerus="yes">
        <source>%n without a birth year count as growing.</source>
        <translation>
            <numerusform>%n sin año de nacimiento se cuenta como en crecimiento.</numerusform>
            <numerusform>%n sin año de nacimiento se cuentan como en crecimiento.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n never taped: taken as any head of that age.</source>
        <translation>
            <numerusform>%n nunca medida: se toma como cualquier cabeza de esa edad.</numerusform>
            <numerusform>%n nunca medidas: se toman como cualquier cabeza de esa edad.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tape(s) are stale.</source>
        <translation>
            <numerusform>%n medida es vieja.</numerusform>
            <numerusform>%n medidas son viejas.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 heads expected off the charts; no order covers them.</source>
        <translation>Se esperan %1 cabezas fuera de las tablas; ningún pedido las cubre.</translation>
    </message>
    <message>
        <source>These wishes contradict each other. Take one of them back.</source>
        <translation>Estos deseos se contradicen. Deshaga uno de ellos.</translation>
    </message>
    <message>
        <source>readings disagree</source>
        <translation>las lecturas no coinciden</translation>
    </message>
    <message>
        <source>The readings of the head disagree: no size is known</source>
        <translation>Las lecturas de la cabeza no coinciden: no se conoce la talla</translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Of this device only</source>
        <translation>Solo de este dispositivo</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>English</source>
        <translation>English</translation>
    </message>
    <message>
        <source>Español</source>
        <translation>Español</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>Metric</source>
        <translation>Métrico</translation>
    </message>
    <message>
        <source>mm, kPa, °C</source>
        <translation>mm, kPa, °C</translation>
    </message>
    <message>
        <source>US</source>
        <translation>EE. UU.</translation>
    </message>
    <message>
        <source>in, psi, °F</source>
        <translation>in, psi, °F</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Tema</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>Noche</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Names</source>
        <translation>Nombres</translation>
    </message>
    <message>
        <source>In full</source>
        <translation>Completos</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Iniciales</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Movimiento</translation>
    </message>
    <message>
        <source>Shown</source>
        <translation>Visible</translation>
    </message>
    <message>
        <source>Reduced</source>
        <translation>Reducido</translation>
    </message>
    <message>
        <source>Locks after</source>
        <translation>Se bloquea después de</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manómetro</translation>
    </message>
    <message>
        <source>Choose a Bluetooth gauge, its zero, its unit</source>
        <translation>Elegir un manómetro Bluetooth, su cero, su unidad</translation>
    </message>
    <message>
        <source>The instructions of the helmet&apos;s maker and local rules come first. No helmet prevents concussion. Snugline judges equipment, never a person.</source>
        <translation>Las instrucciones del fabricante del casco y las reglas locales van primero. Ningún casco evita una conmoción cerebral. Snugline juzga equipo, nunca a una persona.</translation>
    </message>
    <message>
        <source>People</source>
        <translation>Personas</translation>
    </message>
    <message>
        <source>Codes, and the recovery sheet</source>
        <translation>Códigos y la hoja de recuperación</translation>
    </message>
    <message>
        <source>Yearly warning</source>
        <translation>Advertencia anual</translation>
    </message>
    <message>
        <source>Its text, and the form to sign at home</source>
        <translation>Su texto y el formulario para firmar en casa</translation>
    </message>
    <message>
        <source>Privacy</source>
        <translation>Privacidad</translation>
    </message>
    <message>
        <source>How long names are shown, legal holds</source>
        <translation>Cuánto tiempo se muestran los nombres, retenciones legales</translation>
    </message>
</context>
<context>
    <name>SharingPage</name>
    <message>
        <source>Choose the file of a phone</source>
        <translation>Elegir el archivo de un teléfono</translation>
    </message>
    <message>
        <source>Files of phones (*.json)</source>
        <translation>Archivos de teléfonos (*.json)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Sharing</source>
        <translation>Compartir</translation>
    </message>
    <message>
        <source>What an athlete&apos;s phone wrote</source>
        <translation>Lo que escribió el teléfono de un atleta</translation>
    </message>
    <message>
        <source>Take in from a file</source>
        <translation>Recibir desde un archivo</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Elegir un archivo</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Recibirlo</translation>
    </message>
    <message>
        <source>The same file twice changes nothing. An answer for the phone is written beside it: give it back. A code for a phone is shown under Athletes, Change.</source>
        <translation>El mismo archivo dos veces no cambia nada. Junto a él se escribe una respuesta para el teléfono: devuélvala. El código para un teléfono se muestra en Atletas, Cambiar.</translation>
    </message>
</context>
<context>
    <name>SheetChangeScreen</name>
    <message>
        <source>What it changes</source>
        <translation>Qué cambia</translation>
    </message>
    <message>
        <source>On the sheet</source>
        <translation>En la ficha</translation>
    </message>
    <message>
        <source>Nothing: both sheets say the same.</source>
        <translation>Nada: las dos fichas dicen lo mismo.</translation>
    </message>
    <message>
        <source>Athletes</source>
        <translation>Atletas</translation>
    </message>
    <message>
        <source>Row changes</source>
        <translation>Cambia la fila</translation>
    </message>
    <message>
        <source>Helmets that nobody wears</source>
        <translation>Cascos que nadie usa</translation>
    </message>
    <message>
        <source>Keep this sheet</source>
        <translation>Guardar esta ficha</translation>
    </message>
    <message>
        <source>It counts from now on, for every helmet of this model.</source>
        <translation>Cuenta desde ahora para todos los cascos de este modelo.</translation>
    </message>
</context>
<context>
    <name>SheetEdit</name>
    <message>
        <source>Jaw pads</source>
        <translation>Carrilleras</translation>
    </message>
    <message>
        <source>Add jaw pads</source>
        <translation>Agregar carrilleras</translation>
    </message>
    <message>
        <source>Crown pads</source>
        <translation>Almohadillas de coronilla</translation>
    </message>
    <message>
        <source>Add crown pads</source>
        <translation>Agregar almohadillas de coronilla</translation>
    </message>
    <message>
        <source>The gap between eyebrows and front edge that still counts as snug. The target is %1.</source>
        <translation>La altura entre las cejas y el borde frontal que todavía cuenta como que ajusta bien. La meta es %1.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Certified for, months</source>
        <translation>Certificado por, meses</translation>
    </message>
    <message>
        <source>Not recertified beyond this age, months; 0 where the maker states none</source>
        <translation>No se recertifica pasada esta edad, meses; 0 si el fabricante no indica ninguna</translation>
    </message>
    <message>
        <source>In the maker&apos;s own words. Shown where advice is given.</source>
        <translation>Con las palabras del fabricante. Se muestra donde se dan consejos.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>%1, in %2</source>
        <comment>what is typed, in which unit</comment>
        <translation>%1, en %2</translation>
    </message>
    <message>
        <source>%1: %2 less</source>
        <comment>what, how much</comment>
        <translation>%1: %2 menos</translation>
    </message>
    <message>
        <source>%1: %2 more</source>
        <comment>what, how much</comment>
        <translation>%1: %2 más</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no number here</source>
        <translation>&quot;%1&quot; no es un número aquí</translation>
    </message>
    <message>
        <source>Points at which the chin strap is snapped to the shell</source>
        <translation>Puntos donde el barboquejo se abrocha a la carcasa</translation>
    </message>
    <message>
        <source>Four</source>
        <translation>Cuatro</translation>
    </message>
    <message>
        <source>Six</source>
        <translation>Seis</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>where, what is wrong</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Name, as the maker calls the model</source>
        <translation>Nombre, como el fabricante llama al modelo</translation>
    </message>
    <message>
        <source>Short name, for lists and the terminal: small letters, digits and -</source>
        <translation>Nombre corto, para listas y la terminal: letras minúsculas, cifras y -</translation>
    </message>
    <message>
        <source>Head around, small to large, both ends as printed. Neighbours may overlap or leave a gap.</source>
        <translation>Contorno de la cabeza, de menor a mayor, ambos extremos como están impresos. Las tallas vecinas pueden solaparse o dejar un hueco.</translation>
    </message>
    <message>
        <source>Size no. %1</source>
        <translation>Talla n.º %1</translation>
    </message>
    <message>
        <source>Size %1</source>
        <translation>Talla %1</translation>
    </message>
    <message>
        <source>Name, as the maker prints it</source>
        <translation>Nombre, como lo imprime el fabricante</translation>
    </message>
    <message>
        <source>Add a size after it</source>
        <translation>Agregar una talla después</translation>
    </message>
    <message>
        <source>Take this size out</source>
        <translation>Quitar esta talla</translation>
    </message>
    <message>
        <source>Add a size</source>
        <translation>Agregar una talla</translation>
    </message>
    <message>
        <source>As on the left</source>
        <translation>Como a la izquierda</translation>
    </message>
    <message>
        <source>No air in the jaw</source>
        <translation>Sin aire en la mandíbula</translation>
    </message>
    <message>
        <source>No air here</source>
        <translation>Sin aire aquí</translation>
    </message>
    <message>
        <source>Air, %1</source>
        <translation>Aire, %1</translation>
    </message>
    <message>
        <source>Set first to</source>
        <translation>Se pone primero a</translation>
    </message>
    <message>
        <source>Worn from</source>
        <translation>Se usa desde</translation>
    </message>
    <message>
        <source>Worn to</source>
        <translation>Se usa hasta</translation>
    </message>
    <message>
        <source>Add air in the jaw</source>
        <translation>Agregar aire en la mandíbula</translation>
    </message>
    <message>
        <source>Add air at %1</source>
        <translation>Agregar aire: %1</translation>
    </message>
    <message>
        <source>No air: fitted foam or pads only.</source>
        <translation>Sin aire: solo espuma o almohadillas ajustadas.</translation>
    </message>
    <message>
        <source>Limits of air</source>
        <translation>Límites del aire</translation>
    </message>
    <message>
        <source>Move by cold or height that calls for a look</source>
        <translation>Cambio por frío o altura que pide un vistazo</translation>
    </message>
    <message>
        <source>Loss in a week that is no leak</source>
        <translation>Pérdida en una semana que no es fuga</translation>
    </message>
    <message>
        <source>Add a thickness</source>
        <translation>Agregar un grosor</translation>
    </message>
    <message>
        <source>In the helmet as delivered</source>
        <translation>En el casco de fábrica</translation>
    </message>
    <message>
        <source>Thickness no. %1</source>
        <translation>Grosor n.º %1</translation>
    </message>
    <message>
        <source>Take the thickest out</source>
        <translation>Quitar el más grueso</translation>
    </message>
    <message>
        <source>No such pads</source>
        <translation>Sin esas almohadillas</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>number, place with air</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Yes or no questions of this model, asked after the nine marks. A no stops the check with its reason.</source>
        <translation>Preguntas de sí o no de este modelo, después de las nueve marcas. Un no detiene la revisión con su motivo.</translation>
    </message>
    <message>
        <source>Question %1</source>
        <translation>Pregunta %1</translation>
    </message>
    <message>
        <source>What it asks</source>
        <translation>Qué pregunta</translation>
    </message>
    <message>
        <source>The reason shown when the answer is no</source>
        <translation>El motivo que se muestra cuando la respuesta es no</translation>
    </message>
    <message>
        <source>Short name: small letters, digits and -</source>
        <translation>Nombre corto: letras minúsculas, cifras y -</translation>
    </message>
    <message>
        <source>Take this question out</source>
        <translation>Quitar esta pregunta</translation>
    </message>
    <message>
        <source>Add a question</source>
        <translation>Agregar una pregunta</translation>
    </message>
    <message>
        <source>Names</source>
        <translation>Nombres</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Tallas</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Pads</source>
        <translation>Almohadillas</translation>
    </message>
    <message>
        <source>Brow</source>
        <translation>Frente</translation>
    </message>
    <message>
        <source>Straps</source>
        <translation>Correas</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Preguntas</translation>
    </message>
    <message>
        <source>No jaw pads by thickness</source>
        <translation>Sin carrilleras por grosor</translation>
    </message>
    <message>
        <source>No crown pads by thickness</source>
        <translation>Sin almohadillas de coronilla por grosor</translation>
    </message>
    <message>
        <source>It has no air</source>
        <translation>No tiene aire</translation>
    </message>
    <message>
        <source>Has this model air? Without an answer here nothing is known of cold or leaks.</source>
        <translation>¿Este modelo tiene aire? Sin respuesta aquí no se sabe nada del frío ni de fugas.</translation>
    </message>
    <message>
        <source>Has this model pads that are swapped by thickness?</source>
        <translation>¿Este modelo tiene almohadillas que se cambian por grosor?</translation>
    </message>
    <message>
        <source>In which order the nine marks are checked.</source>
        <translation>En qué orden se revisan las nueve marcas.</translation>
    </message>
    <message>
        <source>In which order the air is set at the first fit, and the nine marks are checked.</source>
        <translation>En qué orden se pone el aire en el primer ajuste y se revisan las nueve marcas.</translation>
    </message>
    <message>
        <source>Mark %1. %2</source>
        <comment>number, name of a mark</comment>
        <translation>Marca %1. %2</translation>
    </message>
</context>
<context>
    <name>SheetEditScreen</name>
    <message>
        <source>Sections</source>
        <translation>Secciones</translation>
    </message>
    <message>
        <source>Of the file this could not be taken over. %1</source>
        <translation>Esto del archivo no se pudo tomar. %1</translation>
    </message>
    <message>
        <source>See what it changes</source>
        <translation>Ver qué cambia</translation>
    </message>
    <message>
        <source>Nothing is changed yet</source>
        <translation>Todavía no cambió nada</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Ir a: %1</translation>
    </message>
</context>
<context>
    <name>SheetScreen</name>
    <message>
        <source>Model sheet</source>
        <translation>Ficha de modelo</translation>
    </message>
    <message>
        <source>This sheet counts no more. Checks that began with it keep it.</source>
        <translation>Esta ficha ya no cuenta. Las revisiones que empezaron con ella la conservan.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Touch a place on the drawing to read its limits.</source>
        <translation>Toque un lugar del dibujo para leer sus límites.</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Cambiarla</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Volver a ponerla</translation>
    </message>
    <message>
        <source>Copy it</source>
        <translation>Copiarla</translation>
    </message>
    <message>
        <source>as a model of its own</source>
        <translation>como un modelo propio</translation>
    </message>
    <message>
        <source>Write a file</source>
        <translation>Escribir un archivo</translation>
    </message>
    <message>
        <source>A half written sheet waits on the page before: go on with it or drop it first.</source>
        <translation>Una ficha a medio escribir espera en la página anterior: sígala o deséchela primero.</translation>
    </message>
    <message>
        <source>Sizes, head around</source>
        <translation>Tallas, contorno de la cabeza</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Preguntas</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Other sheets of this model</source>
        <translation>Otras fichas de este modelo</translation>
    </message>
</context>
<context>
    <name>SheetShown</name>
    <message>
        <source>Recovery key</source>
        <translation>Clave de recuperación</translation>
    </message>
    <message>
        <source>%1. Write the key down.</source>
        <translation>%1. Anote la clave.</translation>
    </message>
    <message>
        <source>The sheet to print: %1</source>
        <translation>La hoja para imprimir: %1</translation>
    </message>
    <message>
        <source>Print it and delete the file, or write the key down. Nobody can read it from the Book again. Every sheet made before is void. Do not photograph it.</source>
        <translation>Imprímala y borre el archivo, o anote la clave. Nadie puede volver a leerla en el Libro. Las hojas anteriores quedan sin valor. No la fotografíe.</translation>
    </message>
    <message>
        <source>This key lets one admin set a new code when every code is forgotten. Keep it on paper, under lock and key, away from this tablet.</source>
        <translation>Esta clave permite que una persona responsable ponga un código nuevo cuando se olvidaron todos. Guárdela en papel, bajo llave, lejos de esta tableta.</translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>low end</source>
        <translation>extremo bajo</translation>
    </message>
    <message>
        <source>high end</source>
        <translation>extremo alto</translation>
    </message>
    <message>
        <source>start</source>
        <translation>inicio</translation>
    </message>
    <message>
        <source>place of the air</source>
        <translation>lugar del aire</translation>
    </message>
    <message>
        <source>as delivered</source>
        <translation>de fábrica</translation>
    </message>
    <message>
        <source>thicknesses</source>
        <translation>grosores</translation>
    </message>
    <message>
        <source>short name</source>
        <translation>nombre corto</translation>
    </message>
    <message>
        <source>what it asks</source>
        <translation>qué pregunta</translation>
    </message>
    <message>
        <source>the reason if no</source>
        <translation>el motivo si no</translation>
    </message>
    <message>
        <source>Short name</source>
        <translation>Nombre corto</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Tallas</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Jaw pads</source>
        <translation>Carrilleras</translation>
    </message>
    <message>
        <source>Crown pads</source>
        <translation>Almohadillas de coronilla</translation>
    </message>
    <message>
        <source>Brow gap, low end</source>
        <translation>Altura sobre las cejas, extremo bajo</translation>
    </message>
    <message>
        <source>Brow gap, high end</source>
        <translation>Altura sobre las cejas, extremo alto</translation>
    </message>
    <message>
        <source>Strap points</source>
        <translation>Puntos de las correas</translation>
    </message>
    <message>
        <source>Certified for</source>
        <translation>Certificado por</translation>
    </message>
    <message>
        <source>Age limit</source>
        <translation>Límite de edad</translation>
    </message>
    <message>
        <source>Move of air that calls for a look</source>
        <translation>Cambio del aire que pide un vistazo</translation>
    </message>
    <message>
        <source>Loss in a week that is no leak</source>
        <translation>Pérdida en una semana que no es fuga</translation>
    </message>
    <message>
        <source>Order of setting</source>
        <translation>Orden de puesta</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Preguntas</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Advertencias</translation>
    </message>
    <message>
        <source>From %1 to %2</source>
        <translation>De %1 a %2</translation>
    </message>
    <message numerus="yes">
        <source>%n month(s)</source>
        <translation>
            <numerusform>%n mes</numerusform>
            <numerusform>%n meses</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n point(s)</source>
        <translation>
            <numerusform>%n punto</numerusform>
            <numerusform>%n puntos</numerusform>
        </translation>
    </message>
    <message>
        <source>Kept as %1</source>
        <translation>Se guarda como %1</translation>
    </message>
    <message>
        <source>Size %1</source>
        <translation>Talla %1</translation>
    </message>
    <message>
        <source>Size no. %1</source>
        <translation>Talla n.º %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>which size or port, which value</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Air at %1</source>
        <translation>Aire, %1</translation>
    </message>
    <message>
        <source>Air no. %1</source>
        <translation>Aire n.º %1</translation>
    </message>
    <message>
        <source>Question %1</source>
        <translation>Pregunta %1</translation>
    </message>
    <message>
        <source>%1, no. %2</source>
        <comment>a list, which entry</comment>
        <translation>%1, n.º %2</translation>
    </message>
    <message>
        <source>Not said yet</source>
        <translation>Todavía no se dijo</translation>
    </message>
    <message numerus="yes">
        <source>At most %n character(s)</source>
        <translation>
            <numerusform>Como máximo %n carácter</numerusform>
            <numerusform>Como máximo %n caracteres</numerusform>
        </translation>
    </message>
    <message>
        <source>From %1 to %2 of them</source>
        <translation>De %1 a %2</translation>
    </message>
    <message>
        <source>At most %1 of them</source>
        <translation>Como máximo %1</translation>
    </message>
    <message>
        <source>Not an entry of a model sheet</source>
        <translation>No es un dato de una ficha de modelo</translation>
    </message>
    <message>
        <source>Cannot be read (%1)</source>
        <translation>No se puede leer (%1)</translation>
    </message>
    <message>
        <source>Letters, digits and signs only, and not all blanks</source>
        <translation>Solo letras, cifras y signos, y no solo espacios</translation>
    </message>
    <message>
        <source>Small letters a to z, digits and - only</source>
        <translation>Solo letras minúsculas de la a a la z, cifras y -</translation>
    </message>
    <message>
        <source>&quot;none&quot; means off the chart; another name</source>
        <translation>&quot;none&quot; significa fuera de la tabla; otro nombre</translation>
    </message>
    <message>
        <source>Another size has this name</source>
        <translation>Otra talla tiene este nombre</translation>
    </message>
    <message>
        <source>Ends where it begins, or before</source>
        <translation>Termina donde empieza, o antes</translation>
    </message>
    <message>
        <source>Must begin above where the size before it begins</source>
        <translation>Debe empezar más arriba que la talla anterior</translation>
    </message>
    <message>
        <source>Must end above where the size before it ends</source>
        <translation>Debe terminar más arriba que la talla anterior</translation>
    </message>
    <message>
        <source>Reaches past its neighbour into the size before that</source>
        <translation>Pasa de su vecina y entra en la talla anterior a ella</translation>
    </message>
    <message>
        <source>This place has air already</source>
        <translation>Este lugar ya tiene aire</translation>
    </message>
    <message>
        <source>The start lies outside the band</source>
        <translation>El inicio queda fuera de los límites</translation>
    </message>
    <message>
        <source>Air in the jaw comes left and right</source>
        <translation>El aire de la mandíbula va a izquierda y derecha</translation>
    </message>
    <message>
        <source>The jaw has air or pads by thickness, not both</source>
        <translation>La mandíbula tiene aire o carrilleras por grosor, no ambos</translation>
    </message>
    <message>
        <source>Must be thicker than the one before it</source>
        <translation>Debe ser más gruesa que la anterior</translation>
    </message>
    <message>
        <source>None of the thicknesses above</source>
        <translation>Ninguno de los grosores de arriba</translation>
    </message>
    <message>
        <source>Must lie above the low end</source>
        <translation>Debe quedar por encima del extremo bajo</translation>
    </message>
    <message>
        <source>Must not lie above the target, %1</source>
        <translation>No debe quedar por encima de la meta, %1</translation>
    </message>
    <message>
        <source>Must not lie below the target, %1</source>
        <translation>No debe quedar por debajo de la meta, %1</translation>
    </message>
    <message>
        <source>Four or six</source>
        <translation>Cuatro o seis</translation>
    </message>
    <message>
        <source>Only where there is air</source>
        <translation>Solo donde hay aire</translation>
    </message>
    <message>
        <source>There is no air here</source>
        <translation>Aquí no hay aire</translation>
    </message>
    <message>
        <source>Named twice</source>
        <translation>Nombrado dos veces</translation>
    </message>
    <message>
        <source>A place with air is left out</source>
        <translation>Falta un lugar con aire</translation>
    </message>
    <message>
        <source>A mark, a point or a step of the guide has this name</source>
        <translation>Una marca, un punto o un paso de la guía tiene este nombre</translation>
    </message>
    <message>
        <source>Another question has this name</source>
        <translation>Otra pregunta tiene este nombre</translation>
    </message>
    <message>
        <source>jaw</source>
        <translation>mandíbula</translation>
    </message>
    <message>
        <source>no air</source>
        <translation>sin aire</translation>
    </message>
    <message>
        <source>air: %1</source>
        <comment>places</comment>
        <translation>aire: %1</translation>
    </message>
    <message>
        <source>%1, not swapped by thickness</source>
        <translation>%1, no se cambia por grosor</translation>
    </message>
    <message>
        <source>%1; %2 as delivered</source>
        <translation>%1; %2 de fábrica</translation>
    </message>
    <message>
        <source>, then </source>
        <comment>between places with air</comment>
        <translation>, luego </translation>
    </message>
    <message>
        <source>%1: %2, new</source>
        <translation>%1: %2, nuevo</translation>
    </message>
    <message>
        <source>%1: %2, gone</source>
        <translation>%1: %2, se quita</translation>
    </message>
    <message>
        <source>%1: %2, before %3</source>
        <comment>what, value now, value before</comment>
        <translation>%1: %2, antes %3</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Talla</translation>
    </message>
    <message>
        <source>Size %1, low end</source>
        <translation>Talla %1, extremo bajo</translation>
    </message>
    <message>
        <source>Size %1, high end</source>
        <translation>Talla %1, extremo alto</translation>
    </message>
    <message>
        <source>Order of sizes</source>
        <translation>Orden de las tallas</translation>
    </message>
    <message>
        <source>Air at %1, start</source>
        <translation>Aire, %1, inicio</translation>
    </message>
    <message>
        <source>Air at %1, low end</source>
        <translation>Aire, %1, extremo bajo</translation>
    </message>
    <message>
        <source>Air at %1, high end</source>
        <translation>Aire, %1, extremo alto</translation>
    </message>
    <message>
        <source>%1 as delivered</source>
        <translation>%1 de fábrica</translation>
    </message>
    <message>
        <source>Question %1, the reason if no</source>
        <translation>Pregunta %1, el motivo si no</translation>
    </message>
    <message>
        <source>Order of questions</source>
        <translation>Orden de las preguntas</translation>
    </message>
    <message>
        <source>%1. Before: %2</source>
        <comment>what the board will say, what it says now</comment>
        <translation>%1. Antes: %2</translation>
    </message>
    <message>
        <source>Also: %1</source>
        <comment>a reason of the board</comment>
        <translation>También: %1</translation>
    </message>
    <message>
        <source>No longer: %1</source>
        <comment>a reason of the board</comment>
        <translation>Ya no: %1</translation>
    </message>
    <message>
        <source>Due %1, before %2</source>
        <translation>Toca %1, antes %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>not on the chart</source>
        <translation>no está en la tabla</translation>
    </message>
    <message>
        <source>none stated</source>
        <translation>no se indica</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a lane of the board, its reason</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Size %1 is not on the new chart</source>
        <translation>La talla %1 no está en la tabla nueva</translation>
    </message>
    <message>
        <source>Label good to %1, before to %2</source>
        <translation>Etiqueta vigente hasta %1, antes hasta %2</translation>
    </message>
    <message>
        <source>Out of date by it</source>
        <translation>Vencida por el cambio</translation>
    </message>
    <message>
        <source>In date again by it</source>
        <translation>Vigente otra vez por el cambio</translation>
    </message>
    <message>
        <source>Too old after %1</source>
        <translation>Demasiado viejo después de %1</translation>
    </message>
    <message>
        <source>No age limit any more</source>
        <translation>Ya sin límite de edad</translation>
    </message>
    <message>
        <source>Other air at %1</source>
        <comment>places</comment>
        <translation>Otro aire: %1</translation>
    </message>
    <message>
        <source>Size worn: %1 likely, before %2</source>
        <translation>Talla en uso: %1 probable, antes %2</translation>
    </message>
    <message>
        <source>The check that is open goes on by the sheet it began with</source>
        <translation>La revisión abierta sigue con la ficha con la que empezó</translation>
    </message>
    <message>
        <source>Order of the marks</source>
        <translation>Orden de las marcas</translation>
    </message>
</context>
<context>
    <name>SheetsPage</name>
    <message>
        <source>Choose a model sheet</source>
        <translation>Elegir una ficha de modelo</translation>
    </message>
    <message>
        <source>Model sheets (*.json)</source>
        <translation>Fichas de modelo (*.json)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Model sheets</source>
        <translation>Fichas de modelo</translation>
    </message>
    <message>
        <source>The facts of each helmet model, as its maker states them</source>
        <translation>Los datos de cada modelo de casco, como los da su fabricante</translation>
    </message>
    <message>
        <source>None adopted yet. A helmet can be taken in once its sheet is here.</source>
        <translation>Aún no hay ninguna. Un casco se puede recibir cuando su ficha está aquí.</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Choose a file</source>
        <translation>Elegir un archivo</translation>
    </message>
    <message>
        <source>and %1 more</source>
        <translation>y %1 más</translation>
    </message>
    <message>
        <source>Put it right here</source>
        <translation>Corregirla aquí</translation>
    </message>
    <message>
        <source>As much of the file as could be read is taken over. The file itself stays as it is.</source>
        <translation>Se toma del archivo todo lo que se pudo leer. El archivo queda como está.</translation>
    </message>
    <message>
        <source>Half written: %1</source>
        <translation>A medio escribir: %1</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>Seguir con ella</translation>
    </message>
    <message>
        <source>Drop it</source>
        <translation>Desecharla</translation>
    </message>
    <message>
        <source>Write a new sheet</source>
        <translation>Escribir una ficha nueva</translation>
    </message>
    <message>
        <source>Take a sheet in from a file</source>
        <translation>Tomar una ficha de un archivo</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Tomarla</translation>
    </message>
    <message>
        <source>Replaced</source>
        <translation>Reemplazadas</translation>
    </message>
</context>
<context>
    <name>SizeChart</name>
    <message>
        <source>%1. %2</source>
        <comment>a band of sizes, how it meets the one before</comment>
        <translation>%1. %2</translation>
    </message>
</context>
<context>
    <name>StandingWords</name>
    <message>
        <source>retired</source>
        <translation>retirado</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>perdido</translation>
    </message>
    <message>
        <source>sent out</source>
        <translation>enviado fuera</translation>
    </message>
    <message>
        <source>in repair</source>
        <translation>en reparación</translation>
    </message>
    <message>
        <source>on hold</source>
        <translation>retenido</translation>
    </message>
    <message>
        <source>a fault is open</source>
        <translation>hay una falla abierta</translation>
    </message>
    <message>
        <source>reported broken</source>
        <translation>con aviso de rotura</translation>
    </message>
    <message>
        <source>label missing</source>
        <translation>sin etiqueta</translation>
    </message>
    <message>
        <source>label cannot be read</source>
        <translation>la etiqueta no se puede leer</translation>
    </message>
    <message>
        <source>two readings of its label differ</source>
        <translation>dos lecturas de su etiqueta difieren</translation>
    </message>
    <message>
        <source>label not read yet</source>
        <translation>etiqueta aún sin leer</translation>
    </message>
    <message>
        <source>certification lapses too early, or may</source>
        <translation>la certificación vence demasiado pronto, o puede vencer</translation>
    </message>
    <message>
        <source>its model or size is not known</source>
        <translation>no se conoce su modelo o talla</translation>
    </message>
    <message>
        <source>seven points to check after a report</source>
        <translation>siete puntos por revisar tras un aviso</translation>
    </message>
    <message>
        <source>not in service</source>
        <translation>no está en servicio</translation>
    </message>
    <message>
        <source>two athletes are down for it</source>
        <translation>constan dos atletas para él</translation>
    </message>
    <message>
        <source>last check: do not wear</source>
        <translation>última revisión: no usar</translation>
    </message>
    <message>
        <source>On hold: %1</source>
        <translation>Retenido: %1</translation>
    </message>
    <message>
        <source>%1: fault</source>
        <comment>a point</comment>
        <translation>%1: falla</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Reported broken</source>
        <translation>Con aviso de rotura</translation>
    </message>
    <message>
        <source>Reported broken: “%1”</source>
        <translation>Con aviso de rotura: «%1»</translation>
    </message>
    <message>
        <source>Certification label is missing</source>
        <translation>Falta la etiqueta de certificación</translation>
    </message>
    <message>
        <source>Certification label cannot be read</source>
        <translation>La etiqueta de certificación no se puede leer</translation>
    </message>
    <message>
        <source>Two readings of the label differ</source>
        <translation>Dos lecturas de la etiqueta difieren</translation>
    </message>
    <message>
        <source>Certification label not read yet</source>
        <translation>Etiqueta de certificación aún sin leer</translation>
    </message>
    <message>
        <source>Certification lapsed, last good day %1</source>
        <translation>Certificación vencida, último día bueno %1</translation>
    </message>
    <message>
        <source>Certification lapsed</source>
        <translation>Certificación vencida</translation>
    </message>
    <message>
        <source>After a report: check all seven points before it is worn</source>
        <translation>Tras un aviso: revisar los siete puntos antes de usarlo</translation>
    </message>
    <message>
        <source>%1 not seen yet</source>
        <translation>%1: aún sin ver</translation>
    </message>
    <message>
        <source>Not in service yet</source>
        <translation>Aún sin entrar en servicio</translation>
    </message>
    <message>
        <source>Last check: do not wear</source>
        <translation>Última revisión: no usar</translation>
    </message>
    <message>
        <source>Last check: do not wear, %1</source>
        <translation>Última revisión: no usar, %1</translation>
    </message>
    <message>
        <source>on the shelf</source>
        <translation>en el estante</translation>
    </message>
    <message>
        <source>in our hands</source>
        <translation>en nuestras manos</translation>
    </message>
    <message>
        <source>an athlete</source>
        <translation>un atleta o una atleta</translation>
    </message>
    <message>
        <source>still with %1</source>
        <comment>an athlete</comment>
        <translation>aún lo tiene %1</translation>
    </message>
    <message>
        <source>with %1</source>
        <comment>an athlete</comment>
        <translation>lo tiene %1</translation>
    </message>
    <message>
        <source>In service, %1</source>
        <comment>where it is</comment>
        <translation>En servicio, %1</translation>
    </message>
    <message>
        <source>Not in service yet, %1</source>
        <comment>where it is</comment>
        <translation>Aún sin entrar en servicio, %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>why it is on hold, where it is</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Do not wear: %1, %2</source>
        <comment>why, where it is</comment>
        <translation>No usar: %1, %2</translation>
    </message>
    <message>
        <source>by us</source>
        <translation>por nosotros</translation>
    </message>
    <message>
        <source>by a workshop</source>
        <translation>por un taller</translation>
    </message>
    <message>
        <source>by the recertifying firm</source>
        <translation>por la empresa que recertifica</translation>
    </message>
    <message>
        <source>by its maker</source>
        <translation>por su fabricante</translation>
    </message>
    <message>
        <source>on paper: %1</source>
        <translation>en papel: %1</translation>
    </message>
    <message>
        <source>cleaned</source>
        <translation>limpio</translation>
    </message>
    <message>
        <source>not cleaned yet</source>
        <translation>aún sin limpiar</translation>
    </message>
</context>
<context>
    <name>StepLadder</name>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
</context>
<context>
    <name>Stepper</name>
    <message>
        <source>Less</source>
        <translation>Menos</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>sin leer</translation>
    </message>
</context>
<context>
    <name>Swap</name>
    <message>
        <source>Swap helmet</source>
        <translation>Cambiar de casco</translation>
    </message>
    <message>
        <source>Comes off: %1</source>
        <translation>Se quita: %1</translation>
    </message>
    <message>
        <source>In your own words, if wanted</source>
        <translation>Con sus propias palabras, si hace falta</translation>
    </message>
    <message>
        <source>Where do you stand?</source>
        <translation>¿Dónde está usted?</translation>
    </message>
    <message>
        <source>Spares: touch the reason first</source>
        <translation>Repuestos: toque primero el motivo</translation>
    </message>
    <message>
        <source>Touch the spare to give it now</source>
        <translation>Toque el repuesto para darlo ahora</translation>
    </message>
    <message>
        <source>%1, try on</source>
        <translation>%1, para probar</translation>
    </message>
    <message>
        <source>Not offered</source>
        <translation>No se ofrecen</translation>
    </message>
    <message>
        <source>Why does it come off?</source>
        <translation>¿Por qué se quita?</translation>
    </message>
    <message>
        <source>Where is it now?</source>
        <translation>¿Dónde está ahora?</translation>
    </message>
    <message>
        <source>Spares: say first where the old one is</source>
        <translation>Repuestos: diga primero dónde está el anterior</translation>
    </message>
</context>
<context>
    <name>SwitchHolder</name>
    <message>
        <source>Who takes over?</source>
        <translation>¿Quién toma el relevo?</translation>
    </message>
    <message>
        <source>%1 signs until then. The page stays as it is.</source>
        <translation>Hasta entonces firma %1. La página queda como está.</translation>
    </message>
    <message>
        <source>Take over</source>
        <translation>Tomar el relevo</translation>
    </message>
    <message>
        <source>Lock now</source>
        <translation>Bloquear ahora</translation>
    </message>
</context>
<context>
    <name>TagTrouble</name>
    <message>
        <source>there is nothing in it</source>
        <translation>no contiene nada</translation>
    </message>
    <message>
        <source>%1 characters, at most %2</source>
        <translation>%1 caracteres, como máximo %2</translation>
    </message>
    <message>
        <source>it is not text</source>
        <translation>no es texto</translation>
    </message>
    <message>
        <source>a control character</source>
        <translation>un carácter de control</translation>
    </message>
    <message>
        <source>nothing stands behind the prefix</source>
        <translation>no hay nada después del prefijo</translation>
    </message>
    <message>
        <source>identifier %1 is not one that says which helmet it is</source>
        <translation>el identificador %1 no es de los que dicen qué casco es</translation>
    </message>
    <message>
        <source>identifier %1 has %2 characters and needs %3</source>
        <translation>el identificador %1 tiene %2 caracteres y necesita %3</translation>
    </message>
    <message>
        <source>identifier %1 has %2 characters and needs %3 to %4</source>
        <translation>el identificador %1 tiene %2 caracteres y necesita de %3 a %4</translation>
    </message>
    <message>
        <source>identifier %1 begins with %2 digits, this one does not</source>
        <translation>el identificador %1 empieza con %2 cifras y este no</translation>
    </message>
    <message>
        <source>identifier %1 has a character that GS1 does not allow</source>
        <translation>el identificador %1 tiene un carácter que GS1 no permite</translation>
    </message>
    <message>
        <source>identifier %1 does not begin with a company prefix</source>
        <translation>el identificador %1 no empieza con un prefijo de empresa</translation>
    </message>
    <message>
        <source>identifier %1 does not begin with 0</source>
        <translation>el identificador %1 no empieza con 0</translation>
    </message>
    <message>
        <source>identifier %1 is no day of the calendar</source>
        <translation>el identificador %1 no es un día del calendario</translation>
    </message>
    <message>
        <source>identifier %1 stands twice with different values</source>
        <translation>el identificador %1 está dos veces con valores distintos</translation>
    </message>
    <message>
        <source>identifier %1 has a % that is not followed by two hexadecimal digits</source>
        <translation>el identificador %1 tiene un % al que no siguen dos cifras hexadecimales</translation>
    </message>
    <message>
        <source>identifier %1 has no value</source>
        <translation>el identificador %1 no tiene valor</translation>
    </message>
    <message>
        <source>it names two things at once</source>
        <translation>nombra dos cosas a la vez</translation>
    </message>
    <message>
        <source>identifier %1 stands behind the question mark and belongs before it</source>
        <translation>el identificador %1 está detrás del signo de interrogación y va delante</translation>
    </message>
    <message>
        <source>an identifier in brackets is missing</source>
        <translation>falta un identificador entre paréntesis</translation>
    </message>
    <message>
        <source>the address names no host</source>
        <translation>la dirección no nombra ningún servidor</translation>
    </message>
    <message>
        <source>serial 21 stands without item 01</source>
        <translation>la serie 21 está sin el artículo 01</translation>
    </message>
    <message>
        <source>nothing in it names a helmet</source>
        <translation>nada en ella nombra un casco</translation>
    </message>
</context>
<context>
    <name>Tape</name>
    <message>
        <source>Tape</source>
        <translation>Medir</translation>
    </message>
    <message>
        <source>Read so far: %1</source>
        <translation>Leído hasta ahora: %1</translation>
    </message>
    <message>
        <source>Record reading</source>
        <translation>Registrar lectura</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Set aside: %1</source>
        <translation>Apartada: %1</translation>
    </message>
    <message>
        <source>Set a reading aside</source>
        <translation>Apartar una lectura</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>TapeWords</name>
    <message>
        <source>The tape was read wrong</source>
        <translation>Se leyó mal la cinta</translation>
    </message>
    <message>
        <source>Typed wrong</source>
        <translation>Se escribió mal</translation>
    </message>
    <message>
        <source>Hair or a band in the way</source>
        <translation>Estorbaba el cabello o una banda</translation>
    </message>
    <message>
        <source>Another head</source>
        <translation>Otra cabeza</translation>
    </message>
    <message>
        <source>Another reason</source>
        <translation>Otra razón</translation>
    </message>
</context>
<context>
    <name>Timeline</name>
    <message>
        <source>an athlete</source>
        <translation>atleta</translation>
    </message>
    <message>
        <source>a helmet</source>
        <translation>un casco</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Fault found. %1</source>
        <translation>Falla encontrada. %1</translation>
    </message>
    <message>
        <source>; </source>
        <comment>between faults</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>All seven points sound, seen together</source>
        <translation>Los siete puntos en buen estado, vistos juntos</translation>
    </message>
    <message>
        <source>Sound: %1</source>
        <translation>En buen estado: %1</translation>
    </message>
    <message>
        <source>In service</source>
        <translation>En servicio</translation>
    </message>
    <message>
        <source>Sent to repair</source>
        <translation>Enviado a reparación</translation>
    </message>
    <message>
        <source>Sent out for recertification</source>
        <translation>Enviado a recertificar</translation>
    </message>
    <message>
        <source>Back with us</source>
        <translation>De vuelta con nosotros</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Dado de baja</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdido</translation>
    </message>
    <message>
        <source>On hold: %1</source>
        <translation>Retenido: %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>a pressure in both units</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>on the head</source>
        <translation>en la cabeza</translation>
    </message>
    <message>
        <source>off the head</source>
        <translation>fuera de la cabeza</translation>
    </message>
    <message>
        <source>%1 air filled to %2, %3, %4</source>
        <comment>a bladder, pressure, on the head or off, by what</comment>
        <translation>%1, aire llenado a %2, %3, %4</translation>
    </message>
    <message>
        <source>%1 air read: %2, %3, %4</source>
        <comment>a bladder, pressure, on the head or off, by what</comment>
        <translation>%1, aire leído: %2, %3, %4</translation>
    </message>
    <message>
        <source>Brow, straps and hold seen in the line</source>
        <translation>Frente, correas y sujeción vistas en la fila</translation>
    </message>
    <message>
        <source>Seen in the line: %1</source>
        <translation>Visto en la fila: %1</translation>
    </message>
    <message>
        <source>Book begun for %1</source>
        <translation>Libro abierto para %1</translation>
    </message>
    <message>
        <source>A device joined the Book</source>
        <translation>Un dispositivo se unió al Libro</translation>
    </message>
    <message>
        <source>A code was set</source>
        <translation>Se puso un código</translation>
    </message>
    <message>
        <source>%1 can sign</source>
        <translation>%1 puede firmar</translation>
    </message>
    <message>
        <source>Added to the roster</source>
        <translation>Agregado al plantel</translation>
    </message>
    <message>
        <source>Back on the roster</source>
        <translation>De vuelta en el plantel</translation>
    </message>
    <message>
        <source>Off the roster</source>
        <translation>Fuera del plantel</translation>
    </message>
    <message>
        <source>Jersey is now %1</source>
        <translation>La camiseta es ahora la %1</translation>
    </message>
    <message>
        <source>Name or birth year changed</source>
        <translation>Cambió el nombre o el año de nacimiento</translation>
    </message>
    <message>
        <source>Head taped</source>
        <translation>Cabeza medida</translation>
    </message>
    <message>
        <source>Model sheet adopted</source>
        <translation>Ficha de modelo adoptada</translation>
    </message>
    <message>
        <source>Taken in, size %1</source>
        <translation>Recibido, talla %1</translation>
    </message>
    <message>
        <source>Label read: %1</source>
        <translation>Etiqueta leída: %1</translation>
    </message>
    <message>
        <source>Label looked for and missing</source>
        <translation>Se buscó la etiqueta y falta</translation>
    </message>
    <message>
        <source>Hold released: %1</source>
        <translation>Fin de la retención: %1</translation>
    </message>
    <message>
        <source>Part changed: %1</source>
        <translation>Pieza cambiada: %1</translation>
    </message>
    <message>
        <source>%1 with %2</source>
        <translation>%1 con %2</translation>
    </message>
    <message>
        <source>%1 no longer with %2</source>
        <translation>%1 ya no con %2</translation>
    </message>
    <message>
        <source>%1 begun: %2, %3</source>
        <translation>%1 empezado: %2, %3</translation>
    </message>
    <message>
        <source>Said: hair changed</source>
        <translation>Se dijo: cambió el cabello</translation>
    </message>
    <message>
        <source>Said: something broke</source>
        <translation>Se dijo: algo se rompió</translation>
    </message>
    <message>
        <source>Said: %1</source>
        <translation>Se dijo: %1</translation>
    </message>
    <message>
        <source>Hair changed</source>
        <translation>Cambió el cabello</translation>
    </message>
    <message>
        <source>Practice times set</source>
        <translation>Horario de práctica puesto</translation>
    </message>
    <message>
        <source>Weather noted: %1</source>
        <translation>Clima anotado: %1</translation>
    </message>
    <message>
        <source>Place for travel: %1</source>
        <translation>Lugar de viaje: %1</translation>
    </message>
    <message>
        <source>Place for travel given up: %1</source>
        <translation>Lugar de viaje quitado: %1</translation>
    </message>
    <message>
        <source>An entry was taken back</source>
        <translation>Se retiró una anotación</translation>
    </message>
    <message>
        <source>An entry of a later Snugline</source>
        <translation>Una anotación de un Snugline más nuevo</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>day, time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Yearly warning %1 signed on paper by the athlete, %2</source>
        <comment>season, initials</comment>
        <translation>Advertencia anual %1 firmada en papel por el/la atleta, %2</translation>
    </message>
    <message>
        <source>Yearly warning %1 read and signed by the athlete, %2</source>
        <comment>season, initials</comment>
        <translation>Advertencia anual %1 leída y firmada por el/la atleta, %2</translation>
    </message>
    <message>
        <source>Yearly warning %1 signed on paper by a parent or guardian, %2</source>
        <comment>season, initials</comment>
        <translation>Advertencia anual %1 firmada en papel por madre, padre o tutor/a, %2</translation>
    </message>
    <message>
        <source>Yearly warning %1 read and signed by a parent or guardian, %2</source>
        <comment>season, initials</comment>
        <translation>Advertencia anual %1 leída y firmada por madre, padre o tutor/a, %2</translation>
    </message>
    <message>
        <source>A recovery sheet was made; the ones before it are void</source>
        <translation>Se hizo una hoja de recuperación; las anteriores quedan anuladas</translation>
    </message>
    <message>
        <source>The text of the yearly warning was set; everybody signs anew</source>
        <translation>Se fijó el texto de la advertencia anual; todos firman de nuevo</translation>
    </message>
    <message>
        <source>The text of the yearly warning was set</source>
        <translation>Se fijó el texto de la advertencia anual</translation>
    </message>
    <message numerus="yes">
        <source>Names are shown for %n year(s) after the last entry</source>
        <translation>
            <numerusform>Los nombres se muestran %n año después de la última anotación</numerusform>
            <numerusform>Los nombres se muestran %n años después de la última anotación</numerusform>
        </translation>
    </message>
    <message>
        <source>Names are always shown</source>
        <translation>Los nombres se muestran siempre</translation>
    </message>
    <message>
        <source>Legal hold on everybody: %1</source>
        <translation>Retención legal de todos: %1</translation>
    </message>
    <message>
        <source>Legal hold: %1</source>
        <translation>Retención legal: %1</translation>
    </message>
    <message>
        <source>Legal hold on everybody ended: %1</source>
        <translation>Terminó la retención legal de todos: %1</translation>
    </message>
    <message>
        <source>Legal hold ended: %1</source>
        <translation>Terminó la retención legal: %1</translation>
    </message>
    <message>
        <source>No shelf of its own</source>
        <translation>Sin estante propio</translation>
    </message>
    <message>
        <source>Belongs on %1</source>
        <comment>shelf</comment>
        <translation>Su estante: %1</translation>
    </message>
    <message>
        <source>%1. Why: %2</source>
        <translation>%1. Por qué: %2</translation>
    </message>
    <message>
        <source>%1 replaced</source>
        <translation>%1: pieza reemplazada</translation>
    </message>
    <message>
        <source>%1 replaced: %2</source>
        <translation>%1: pieza reemplazada, %2</translation>
    </message>
    <message>
        <source>Maker&apos;s notice of %1: %2. %3</source>
        <translation>Aviso del fabricante del %1: %2. %3</translation>
    </message>
    <message>
        <source>A code for a phone of their own was given out</source>
        <translation>Se dio un código para un teléfono propio</translation>
    </message>
    <message>
        <source>A phone of their own was let go</source>
        <translation>Se dejó fuera un teléfono propio</translation>
    </message>
    <message>
        <source>Model sheet changed</source>
        <translation>Ficha de modelo cambiada</translation>
    </message>
    <message>
        <source>Season %1 closed</source>
        <translation>Temporada %1 cerrada</translation>
    </message>
    <message>
        <source>Photo taken</source>
        <translation>Foto tomada</translation>
    </message>
    <message>
        <source>Photo taken: %1</source>
        <translation>Foto tomada: %1</translation>
    </message>
    <message>
        <source>Handed in at the end of season %1</source>
        <translation>Entregado al final de la temporada %1</translation>
    </message>
    <message>
        <source>Handed in by %1 at the end of season %2</source>
        <translation>Entregado por %1 al final de la temporada %2</translation>
    </message>
    <message>
        <source>In our hands</source>
        <translation>En nuestras manos</translation>
    </message>
    <message>
        <source>With the athlete</source>
        <translation>Lo tiene el atleta o la atleta</translation>
    </message>
    <message>
        <source>On hold: %1, still with the athlete</source>
        <translation>Retenido: %1, aún lo tiene el atleta o la atleta</translation>
    </message>
    <message>
        <source>The role of somebody was changed</source>
        <translation>Se cambió la función de alguien</translation>
    </message>
    <message>
        <source>Label cannot be read</source>
        <translation>La etiqueta no se puede leer</translation>
    </message>
    <message>
        <source>In an emergency: call %1</source>
        <translation>En una emergencia: llamar al %1</translation>
    </message>
    <message>
        <source>Back with us: %1</source>
        <translation>De vuelta con nosotros: %1</translation>
    </message>
    <message>
        <source>A reading of the head set aside</source>
        <translation>Una lectura de la cabeza apartada</translation>
    </message>
</context>
<context>
    <name>Trouble</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 is on hold. Release the hold first</source>
        <translation>%1 está retenido. Termine primero la retención</translation>
    </message>
    <message>
        <source>%1 is away. Note that it is back first</source>
        <translation>%1 no está. Anote primero que volvió</translation>
    </message>
    <message>
        <source>%1 is retired and stays so</source>
        <translation>%1 está dado de baja y así se queda</translation>
    </message>
    <message>
        <source>%1 is not in service. Take it in at the Dock first</source>
        <translation>%1 no está en servicio. Recíbalo primero en Recepción</translation>
    </message>
    <message>
        <source>The label of %1 has lapsed</source>
        <translation>La etiqueta de %1 está vencida</translation>
    </message>
    <message>
        <source>%1 has no certification label</source>
        <translation>%1 no tiene etiqueta de certificación</translation>
    </message>
    <message>
        <source>The label of %1 has not been read yet</source>
        <translation>La etiqueta de %1 aún no se ha leído</translation>
    </message>
    <message>
        <source>Two readings of the label of %1 differ. Read it again</source>
        <translation>Dos lecturas de la etiqueta de %1 no coinciden. Léala otra vez</translation>
    </message>
    <message>
        <source>%1 has not been seen yet</source>
        <translation>%1: aún sin ver</translation>
    </message>
    <message>
        <source>%1 has an open fault</source>
        <translation>%1: tiene una falla abierta</translation>
    </message>
    <message>
        <source>The athlete said that something broke. See the seven points first</source>
        <translation>Se dijo que algo se rompió. Vea primero los siete puntos</translation>
    </message>
    <message>
        <source>See the athlete now. Equipment work waits</source>
        <translation>Atienda ya a esta persona. El trabajo con el equipo espera</translation>
    </message>
    <message>
        <source>No helmet is paired with this athlete</source>
        <translation>Esta persona no tiene casco asignado</translation>
    </message>
    <message>
        <source>Two helmets are noted for this athlete. Settle which one is worn</source>
        <translation>Hay dos cascos anotados para esta persona. Aclare cuál usa</translation>
    </message>
    <message>
        <source>Two athletes are noted for this helmet. Settle who wears it</source>
        <translation>Hay dos personas anotadas para este casco. Aclare quién lo usa</translation>
    </message>
    <message>
        <source>This helmet was never fitted on this athlete. Begin with a first fit</source>
        <translation>Este casco nunca se ajustó a esta persona. Empiece con un primer ajuste</translation>
    </message>
    <message>
        <source>A check is still open for this athlete</source>
        <translation>Esta persona aún tiene una revisión abierta</translation>
    </message>
    <message>
        <source>That is closed already</source>
        <translation>Eso ya está cerrado</translation>
    </message>
    <message>
        <source>Nothing was said yet</source>
        <translation>Aún no se dijo nada</translation>
    </message>
    <message>
        <source>This reading would be older than the last refill. Look at the clock of this device</source>
        <translation>Esta lectura sería anterior al último llenado. Revise el reloj de este dispositivo</translation>
    </message>
    <message>
        <source>This reading would be older than the last one. Look at the clock of this device</source>
        <translation>Esta lectura sería anterior a la última. Revise el reloj de este dispositivo</translation>
    </message>
    <message>
        <source>This athlete is off the roster</source>
        <translation>Esta persona está fuera del plantel</translation>
    </message>
    <message>
        <source>That cannot be done now</source>
        <translation>Eso no se puede hacer ahora</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a number with a unit</source>
        <translation>&quot;%1&quot; no es un número con unidad</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs a unit, such as mm or in</source>
        <translation>&quot;%1&quot; necesita una unidad, como mm o in</translation>
    </message>
    <message>
        <source>That value is out of range</source>
        <translation>Ese valor está fuera de rango</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a date</source>
        <translation>&quot;%1&quot; no es una fecha</translation>
    </message>
    <message>
        <source>This is not a model sheet file</source>
        <translation>Esto no es un archivo de ficha de modelo</translation>
    </message>
    <message>
        <source>This entry is missing</source>
        <translation>Falta este dato</translation>
    </message>
    <message>
        <source>This entry is of the wrong kind</source>
        <translation>Este dato es del tipo equivocado</translation>
    </message>
    <message>
        <source>This entry is not known</source>
        <translation>Este dato no se conoce</translation>
    </message>
    <message>
        <source>This word is not known</source>
        <translation>Esta palabra no se conoce</translation>
    </message>
    <message>
        <source>This entry stands there twice</source>
        <translation>Este dato aparece dos veces</translation>
    </message>
    <message>
        <source>These entries contradict each other</source>
        <translation>Estos datos se contradicen</translation>
    </message>
    <message>
        <source>The model sheet has no such part</source>
        <translation>La ficha de modelo no tiene esa pieza</translation>
    </message>
    <message>
        <source>This scan cannot be a serial tag</source>
        <translation>Este escaneo no puede ser una placa de serie</translation>
    </message>
    <message>
        <source>The check digit of this tag does not agree</source>
        <translation>El dígito de control de esta placa no coincide</translation>
    </message>
    <message>
        <source>This file is not text. Save the roster as CSV and choose that file</source>
        <translation>Este archivo no es texto. Guarde el plantel como CSV y elija ese archivo</translation>
    </message>
    <message>
        <source>No row could be read</source>
        <translation>No se pudo leer ningún renglón</translation>
    </message>
    <message>
        <source>The file cannot be read</source>
        <translation>El archivo no se puede leer</translation>
    </message>
    <message>
        <source>Nothing could be written</source>
        <translation>No se pudo escribir nada</translation>
    </message>
    <message>
        <source>The disk is full. Nothing was half written; make room and try again</source>
        <translation>El disco está lleno. Nada quedó a medias; haga espacio e intente de nuevo</translation>
    </message>
    <message>
        <source>This place can only be read, not written</source>
        <translation>En este lugar solo se puede leer, no escribir</translation>
    </message>
    <message>
        <source>This file is not a Book</source>
        <translation>Este archivo no es un Libro</translation>
    </message>
    <message>
        <source>This Book is damaged</source>
        <translation>Este Libro está dañado</translation>
    </message>
    <message>
        <source>This Book was written by a newer Snugline</source>
        <translation>Este Libro lo escribió un Snugline más nuevo</translation>
    </message>
    <message>
        <source>Another program has this Book open</source>
        <translation>Otro programa tiene abierto este Libro</translation>
    </message>
    <message>
        <source>There is a file of that name already</source>
        <translation>Ya hay un archivo con ese nombre</translation>
    </message>
    <message>
        <source>That is not in the Book</source>
        <translation>Eso no está en el Libro</translation>
    </message>
    <message>
        <source>That device is not known to the Book</source>
        <translation>El Libro no conoce ese dispositivo</translation>
    </message>
    <message>
        <source>The record does not follow on from what is held</source>
        <translation>El registro no continúa lo que ya hay</translation>
    </message>
    <message>
        <source>A signature does not agree</source>
        <translation>Una firma no coincide</translation>
    </message>
    <message>
        <source>That is too long</source>
        <translation>Es demasiado largo</translation>
    </message>
    <message>
        <source>The key of this device could not be read or made</source>
        <translation>No se pudo leer ni crear la llave de este dispositivo</translation>
    </message>
    <message>
        <source>The device has run out of memory. Nothing was written</source>
        <translation>El dispositivo se quedó sin memoria. No se escribió nada</translation>
    </message>
    <message>
        <source>Something went wrong inside Snugline. Nothing was written</source>
        <translation>Algo falló dentro de Snugline. No se escribió nada</translation>
    </message>
    <message>
        <source>The text was changed while it was read. Read it again</source>
        <translation>El texto cambió mientras se leía. Léalo otra vez</translation>
    </message>
    <message>
        <source>That is signed already this season</source>
        <translation>Eso ya está firmado esta temporada</translation>
    </message>
    <message>
        <source>Say first who signs for staff: whoever stands by is the witness</source>
        <translation>Diga primero quién firma por el personal: quien está al lado es testigo</translation>
    </message>
    <message>
        <source>Another sheet that counts has the short name %1. Give this one another, or change that sheet instead</source>
        <translation>Otra ficha vigente tiene el nombre corto %1. Dé otro a esta, o cambie aquella</translation>
    </message>
    <message>
        <source>%1 was changed meanwhile. Look again at what counts now</source>
        <translation>%1 cambió mientras tanto. Vuelva a mirar lo que cuenta ahora</translation>
    </message>
    <message>
        <source>Helmets have a size that this sheet lacks: %1</source>
        <translation>Hay cascos con una talla que esta ficha no tiene: %1</translation>
    </message>
    <message>
        <source>Season %1 is still open. Close it first</source>
        <translation>La temporada %1 sigue abierta. Hay que cerrarla primero</translation>
    </message>
    <message>
        <source>There was a season %1 already. Give the next one another name</source>
        <translation>Ya hubo una temporada %1. Póngale otro nombre a la próxima</translation>
    </message>
    <message>
        <source>The label of %1 cannot be read</source>
        <translation>La etiqueta de %1 no se puede leer</translation>
    </message>
    <message>
        <source>Nobody has %1</source>
        <translation>Nadie tiene %1</translation>
    </message>
    <message>
        <source>Staff do this. Ask one of them to sign here</source>
        <translation>Esto lo hace el personal. Pida que alguien firme aquí</translation>
    </message>
    <message>
        <source>An admin does this. Ask one of them to sign here</source>
        <translation>Esto lo hace una persona responsable. Pida que firme aquí</translation>
    </message>
    <message>
        <source>An athletic trainer or designated health care professional closes this</source>
        <translation>Esto lo cierra un entrenador atlético o una entrenadora atlética (athletic trainer), o profesional de la salud designado</translation>
    </message>
    <message>
        <source>A hit that was said stays. Staff ask the athlete and close it</source>
        <translation>Un golpe que se dijo queda escrito. El personal pregunta a quien lo dijo y lo cierra</translation>
    </message>
    <message>
        <source>One admin must remain: somebody gives out codes</source>
        <translation>Debe quedar una persona responsable: alguien da los códigos</translation>
    </message>
    <message>
        <source>the helmet has changed hands or place since</source>
        <translation>desde entonces el casco cambió de manos o de lugar</translation>
    </message>
    <message>
        <source>a check was begun since</source>
        <translation>desde entonces se empezó una revisión</translation>
    </message>
    <message>
        <source>the check went on since</source>
        <translation>desde entonces la revisión siguió</translation>
    </message>
    <message>
        <source>the check has ended since</source>
        <translation>desde entonces la revisión terminó</translation>
    </message>
    <message>
        <source>a helmet is held because of it</source>
        <translation>hay un casco retenido por eso</translation>
    </message>
    <message>
        <source>a helmet was taken in under it since</source>
        <translation>desde entonces se recibió un casco con ella</translation>
    </message>
    <message>
        <source>the season went on since</source>
        <translation>desde entonces la temporada siguió</translation>
    </message>
    <message>
        <source>something recorded since rests on it</source>
        <translation>algo anotado después se apoya en eso</translation>
    </message>
    <message>
        <source>The athlete said something that nobody has seen to yet</source>
        <translation>El atleta dijo algo que nadie ha atendido todavía</translation>
    </message>
    <message>
        <source>A hold on the shell ends when the recertifying firm or the maker sends it back with paper and its label is read anew, or when it is retired</source>
        <translation>Una retención de la carcasa termina cuando la empresa que recertifica o el fabricante lo devuelve con papel y se lee de nuevo su etiqueta, o cuando se retira</translation>
    </message>
    <message>
        <source>The label of %1 is not good today. Read a good one first</source>
        <translation>La etiqueta de %1 no vale hoy. Lea primero una que valga</translation>
    </message>
    <message>
        <source>Check the seven points of %1 first: somebody reported on it</source>
        <translation>Revise primero los siete puntos de %1: hubo un aviso</translation>
    </message>
    <message>
        <source>%1 is away. Say first what was done to it</source>
        <translation>%1 está fuera. Diga primero qué se le hizo</translation>
    </message>
    <message>
        <source>%1 is not away</source>
        <translation>%1 no está fuera</translation>
    </message>
    <message>
        <source>That cannot be undone any more: %1</source>
        <comment>what happened since</comment>
        <translation>Eso ya no se puede deshacer: %1</translation>
    </message>
</context>
<context>
    <name>Turn</name>
    <message>
        <source>Next in line</source>
        <translation>Siguiente en la fila</translation>
    </message>
    <message>
        <source>The line is through</source>
        <translation>La fila terminó</translation>
    </message>
    <message>
        <source>End the line</source>
        <translation>Terminar la fila</translation>
    </message>
    <message>
        <source>Nobody is left to see in this lane.</source>
        <translation>No queda nadie por ver en este carril.</translation>
    </message>
    <message>
        <source>Not here</source>
        <translation>No está</translation>
    </message>
    <message>
        <source>Back to the board</source>
        <translation>Volver al tablero</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
</context>
<context>
    <name>UndoBar</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
</context>
<context>
    <name>UnitFact</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>UnitHolds</name>
    <message>
        <source>Put right by</source>
        <translation>Se corrigió con</translation>
    </message>
    <message>
        <source>Release this hold</source>
        <translation>Terminar esta retención</translation>
    </message>
    <message>
        <source>Hold this helmet</source>
        <translation>Retener este casco</translation>
    </message>
    <message>
        <source>Which point</source>
        <translation>Qué punto</translation>
    </message>
    <message>
        <source>Something broke</source>
        <translation>Algo se rompió</translation>
    </message>
    <message>
        <source>Another cause</source>
        <translation>Otra causa</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Qué tiene</translation>
    </message>
    <message>
        <source>Hold, in our hands</source>
        <translation>Retener, en nuestras manos</translation>
    </message>
    <message>
        <source>Hold, still with the athlete</source>
        <translation>Retener, aún con quien lo usa</translation>
    </message>
    <message>
        <source>Add a photo of it</source>
        <translation>Agregar una foto</translation>
    </message>
</context>
<context>
    <name>UnitLabel</name>
    <message>
        <source>Read the label again</source>
        <translation>Leer la etiqueta otra vez</translation>
    </message>
    <message>
        <source>What does the label say?</source>
        <translation>¿Qué dice la etiqueta?</translation>
    </message>
</context>
<context>
    <name>UnitMoves</name>
    <message>
        <source>Where it goes</source>
        <translation>A dónde va</translation>
    </message>
    <message>
        <source>Shelf where it belongs</source>
        <translation>Estante que le toca</translation>
    </message>
    <message>
        <source>Shelf 3</source>
        <translation>Estante 3</translation>
    </message>
    <message>
        <source>Keep this shelf</source>
        <translation>Guardar este estante</translation>
    </message>
    <message>
        <source>Firm or place, if wanted</source>
        <translation>Empresa o lugar, si hace falta</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Or in your own words</source>
        <translation>O con sus propias palabras</translation>
    </message>
</context>
<context>
    <name>UnitParts</name>
    <message>
        <source>A part was replaced</source>
        <translation>Se reemplazó una pieza</translation>
    </message>
    <message>
        <source>Which part is new?</source>
        <translation>¿Qué pieza es nueva?</translation>
    </message>
    <message>
        <source>In your own words, if wanted</source>
        <translation>Con sus propias palabras, si hace falta</translation>
    </message>
</context>
<context>
    <name>UnitPhotos</name>
    <message>
        <source>Add a photo</source>
        <translation>Agregar una foto</translation>
    </message>
    <message>
        <source>Of the helmet only, never of a person</source>
        <translation>Solo del casco, nunca de una persona</translation>
    </message>
</context>
<context>
    <name>UnitPoint</name>
    <message>
        <source>Seen again: sound</source>
        <translation>Visto otra vez: en buen estado</translation>
    </message>
    <message>
        <source>Fault</source>
        <translation>Falla</translation>
    </message>
    <message>
        <source>%1: what is wrong?</source>
        <translation>%1: ¿qué tiene?</translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation>Con sus propias palabras</translation>
    </message>
    <message>
        <source>Note this fault</source>
        <translation>Anotar esta falla</translation>
    </message>
</context>
<context>
    <name>UnitScreen</name>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>Touch a point on the drawing to see when it was seen, or to see it again.</source>
        <translation>Toque un punto en el dibujo para saber cuándo se vio, o para verlo otra vez.</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Worn by</source>
        <translation>Lo usa</translation>
    </message>
    <message>
        <source>Nobody wears it</source>
        <translation>Nadie lo usa</translation>
    </message>
    <message>
        <source>Given back</source>
        <translation>Devuelto</translation>
    </message>
    <message>
        <source>%1 gave it back</source>
        <translation>%1 lo devolvió</translation>
    </message>
    <message>
        <source>Give it to another athlete</source>
        <translation>Darlo a otra persona</translation>
    </message>
    <message>
        <source>Give it to an athlete</source>
        <translation>Darlo a una persona</translation>
    </message>
    <message>
        <source>History</source>
        <translation>Historial</translation>
    </message>
    <message>
        <source>Print its card</source>
        <translation>Imprimir su ficha</translation>
    </message>
    <message>
        <source>With its photos, without names of athletes</source>
        <translation>Con sus fotos, sin nombres de atletas</translation>
    </message>
    <message>
        <source>The card is kept as a file.</source>
        <translation>La ficha queda guardada como archivo.</translation>
    </message>
    <message>
        <source>Do not wear</source>
        <translation>No usar</translation>
    </message>
    <message>
        <source>It is in our hands</source>
        <translation>Está en nuestras manos</translation>
    </message>
</context>
<context>
    <name>UnitWords</name>
    <message>
        <source>Faceguard</source>
        <translation>Careta</translation>
    </message>
    <message>
        <source>Chin strap</source>
        <translation>Barboquejo</translation>
    </message>
    <message>
        <source>Hardware</source>
        <translation>Herrajes</translation>
    </message>
    <message>
        <source>Crown pads</source>
        <translation>Almohadillas de la coronilla</translation>
    </message>
    <message>
        <source>Side pads</source>
        <translation>Almohadillas de los lados</translation>
    </message>
    <message>
        <source>Jaw pads</source>
        <translation>Carrilleras</translation>
    </message>
    <message>
        <source>Crown bladder</source>
        <translation>Vejiga de la coronilla</translation>
    </message>
    <message>
        <source>Side bladder</source>
        <translation>Vejiga de los lados</translation>
    </message>
    <message>
        <source>Jaw bladder</source>
        <translation>Vejiga de la carrillera</translation>
    </message>
    <message>
        <source>Warning label</source>
        <translation>Etiqueta de advertencia</translation>
    </message>
    <message>
        <source>To see again: all nine marks</source>
        <translation>Ver otra vez: las nueve marcas</translation>
    </message>
    <message>
        <source>To see again: %1</source>
        <comment>marks</comment>
        <translation>Ver otra vez: %1</translation>
    </message>
    <message>
        <source>made %1</source>
        <comment>year</comment>
        <translation>hecho en %1</translation>
    </message>
    <message>
        <source>made %1 to %2</source>
        <comment>years</comment>
        <translation>hecho de %1 a %2</translation>
    </message>
    <message>
        <source>made %1 or later</source>
        <comment>year</comment>
        <translation>hecho en %1 o después</translation>
    </message>
    <message>
        <source>made %1 or earlier</source>
        <comment>year</comment>
        <translation>hecho en %1 o antes</translation>
    </message>
    <message>
        <source>lot %1</source>
        <translation>lote %1</translation>
    </message>
    <message>
        <source>serials %1 to %2</source>
        <translation>series de %1 a %2</translation>
    </message>
    <message>
        <source>serials from %1</source>
        <translation>series desde %1</translation>
    </message>
    <message>
        <source>serials up to %1</source>
        <translation>series hasta %1</translation>
    </message>
    <message>
        <source>No helmet</source>
        <translation>Ningún casco</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>14 helmets, 9 on heads</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n casco</numerusform>
            <numerusform>%n cascos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n on heads</source>
        <translation>
            <numerusform>%n en uso</numerusform>
            <numerusform>%n en uso</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n helmet(s) the year or the lot is not known</source>
        <translation>
            <numerusform>De %n casco no se conoce el año o el lote</numerusform>
            <numerusform>De %n cascos no se conoce el año o el lote</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n helmet(s) the lot is not known</source>
        <translation>
            <numerusform>De %n casco no se conoce el lote</numerusform>
            <numerusform>De %n cascos no se conoce el lote</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Of %n helmet(s) the year made is not known</source>
        <translation>
            <numerusform>De %n casco no se conoce el año en que se hizo</numerusform>
            <numerusform>De %n cascos no se conoce el año en que se hicieron</numerusform>
        </translation>
    </message>
    <message>
        <source>Maker&apos;s notice of %1: %2</source>
        <translation>Aviso del fabricante del %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n on hold</source>
        <translation>
            <numerusform>%n retenido</numerusform>
            <numerusform>%n retenidos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n not put in service yet</source>
        <translation>
            <numerusform>%n aún sin entrar en servicio</numerusform>
            <numerusform>%n aún sin entrar en servicio</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with an open fault</source>
        <translation>
            <numerusform>%n con una falla abierta</numerusform>
            <numerusform>%n con una falla abierta</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n said to be broken and not looked at since</source>
        <translation>
            <numerusform>%n que se dijo roto y nadie ha revisado desde entonces</numerusform>
            <numerusform>%n que se dijeron rotos y nadie ha revisado desde entonces</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with a label that is lapsed, missing, not read or in question</source>
        <translation>
            <numerusform>%n con la etiqueta vencida, faltante, sin leer o en duda</numerusform>
            <numerusform>%n con la etiqueta vencida, faltante, sin leer o en duda</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without a model sheet</source>
        <translation>
            <numerusform>%n sin ficha de modelo</numerusform>
            <numerusform>%n sin ficha de modelo</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of another size</source>
        <translation>
            <numerusform>%n de otra talla</numerusform>
            <numerusform>%n de otra talla</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n tried on this head, and no fit was reached</source>
        <translation>
            <numerusform>%n probado en esta cabeza sin lograr el ajuste</numerusform>
            <numerusform>%n probados en esta cabeza sin lograr el ajuste</numerusform>
        </translation>
    </message>
    <message>
        <source>good to %1</source>
        <comment>day</comment>
        <translation>válida hasta el %1</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s) not seen</source>
        <translation>
            <numerusform>%n punto sin ver</numerusform>
            <numerusform>%n puntos sin ver</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n in repair, sent out or still with an athlete</source>
        <translation>
            <numerusform>%n en reparación, enviado fuera o aún con un atleta o una atleta</numerusform>
            <numerusform>%n en reparación, enviados fuera o aún con atletas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with seven points to check after a report</source>
        <translation>
            <numerusform>%n con siete puntos por revisar tras un aviso</numerusform>
            <numerusform>%n con siete puntos por revisar tras un aviso</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Unnamed</name>
    <message>
        <source>See athlete now</source>
        <translation>Atender ya a esta persona</translation>
    </message>
    <message>
        <source>No number was typed. Ask who was at the tablet then.</source>
        <translation>No se escribió ningún número. Pregunte quién estaba en la tableta a esa hora.</translation>
    </message>
    <message>
        <source>This is closed.</source>
        <translation>Esto está cerrado.</translation>
    </message>
</context>
<context>
    <name>Verdict</name>
    <message>
        <source>Next athlete</source>
        <translation>Siguiente atleta</translation>
    </message>
    <message>
        <source>Swap helmet</source>
        <translation>Cambiar casco</translation>
    </message>
</context>
<context>
    <name>VerdictWords</name>
    <message>
        <source>Recorded %1, not signed</source>
        <translation>Registrado %1, sin firma</translation>
    </message>
    <message>
        <source>Signed %1, %2</source>
        <translation>Firmado %1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n marks</source>
        <translation>
            <numerusform>%n marca</numerusform>
            <numerusform>%n marcas</numerusform>
        </translation>
    </message>
    <message>
        <source>Marks not seen: %1.</source>
        <translation>Marcas sin ver: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n points</source>
        <translation>
            <numerusform>%n punto</numerusform>
            <numerusform>%n puntos</numerusform>
        </translation>
    </message>
    <message>
        <source>Points not seen: %1.</source>
        <translation>Puntos sin ver: %1.</translation>
    </message>
    <message>
        <source>%1 not seen</source>
        <translation>%1: sin ver</translation>
    </message>
    <message>
        <source>All nine marks snug, all seven points sound, certification in date.</source>
        <translation>Las nueve marcas ajustan bien, los siete puntos en buen estado, certificación vigente.</translation>
    </message>
</context>
<context>
    <name>WarningCard</name>
    <message>
        <source>Read and sign</source>
        <translation>Leer y firmar</translation>
    </message>
    <message>
        <source>Hand the tablet to the athlete</source>
        <translation>Dé la tableta a la persona</translation>
    </message>
    <message>
        <source>Parent or guardian reads and signs</source>
        <translation>Lee y firma la madre, el padre o quien es tutor/a</translation>
    </message>
    <message>
        <source>Hand the tablet over</source>
        <translation>Entregue la tableta</translation>
    </message>
    <message>
        <source>Signed on paper</source>
        <translation>Firmado en papel</translation>
    </message>
    <message>
        <source>The school keeps the signed sheet. Note here whose initials it carries.</source>
        <translation>La escuela guarda la hoja firmada. Anote aquí qué iniciales lleva.</translation>
    </message>
    <message>
        <source>Athlete</source>
        <translation>Atleta</translation>
    </message>
    <message>
        <source>Parent or guardian</source>
        <translation>Madre, padre o tutor/a</translation>
    </message>
    <message>
        <source>Initials on the paper</source>
        <translation>Iniciales en el papel</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
</context>
<context>
    <name>WarningText</name>
    <message>
        <source>Yearly warning</source>
        <translation>Advertencia anual</translation>
    </message>
    <message>
        <source>Read and signed once a season by the athlete, and by a parent or guardian of a minor. Whoever signed keeps what they signed: the Book holds every text by its hash. Ask who answers for it at your school before you change it.</source>
        <translation>La lee y firma una vez por temporada cada atleta, y la madre, el padre o quien es tutor/a de quien es menor. Lo firmado queda como se firmó: el Libro conserva cada texto por su huella. Pregunte a quien responde por ello en su escuela antes de cambiarlo.</translation>
    </message>
    <message>
        <source>In English</source>
        <translation>En inglés</translation>
    </message>
    <message>
        <source>In Spanish; empty where it is not offered</source>
        <translation>En español; vacío donde no se ofrece</translation>
    </message>
    <message>
        <source>Whoever signed already this season</source>
        <translation>Quien ya firmó esta temporada</translation>
    </message>
    <message>
        <source>Stays signed</source>
        <translation>Sigue firmado</translation>
    </message>
    <message>
        <source>Signs anew</source>
        <translation>Firma de nuevo</translation>
    </message>
    <message>
        <source>The form to print: %1</source>
        <translation>El formulario para imprimir: %1</translation>
    </message>
    <message>
        <source>Keep this text</source>
        <translation>Guardar este texto</translation>
    </message>
    <message>
        <source>Form to sign at home</source>
        <translation>Formulario para firmar en casa</translation>
    </message>
    <message>
        <source>A PDF with lines for the signatures</source>
        <translation>Un PDF con líneas para las firmas</translation>
    </message>
</context>
<context>
    <name>WeatherChip</name>
    <message>
        <source>Weather where the helmets are</source>
        <translation>Clima donde están los cascos</translation>
    </message>
    <message>
        <source>Colder</source>
        <translation>Más frío</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Clima</translation>
    </message>
    <message>
        <source>Warmer</source>
        <translation>Más calor</translation>
    </message>
</context>
<context>
    <name>WeatherSheet</name>
    <message>
        <source>Weather where the helmets are</source>
        <translation>Clima donde están los cascos</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Where have the helmets been? The truck counts, not the field.</source>
        <translation>¿Dónde han estado los cascos? Cuenta el camión, no el campo.</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Places that you travel to stand here, with their elevation.</source>
        <translation>Aquí aparecen los lugares a los que viajan, con su altitud.</translation>
    </message>
    <message>
        <source>Add or remove a place</source>
        <translation>Agregar o quitar un lugar</translation>
    </message>
    <message>
        <source>Name of the place</source>
        <translation>Nombre del lugar</translation>
    </message>
    <message>
        <source>Keep this place</source>
        <translation>Guardar este lugar</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>Quitar %1</translation>
    </message>
</context>
<context>
    <name>demo</name>
    <message>
        <source>Write pictures of the screens and end.</source>
        <translation>Escribir imágenes de las pantallas y terminar.</translation>
    </message>
    <message>
        <source>The demo&apos;s Book; made when missing.</source>
        <translation>El Libro de la demostración; se crea si falta.</translation>
    </message>
    <message>
        <source>Only pictures of this size, as 390x844.</source>
        <translation>Solo imágenes de este tamaño, como 390x844.</translation>
    </message>
    <message>
        <source>Pictures in day, sun or night.</source>
        <translation>Imágenes en day, sun o night.</translation>
    </message>
    <message>
        <source>Text size of the pictures in percent.</source>
        <translation>Tamaño del texto de las imágenes en por ciento.</translation>
    </message>
    <message>
        <source>Language of the pictures, en or es.</source>
        <translation>Idioma de las imágenes, en o es.</translation>
    </message>
    <message>
        <source>Only the pictures of people, gear, photos, dock, sheets, phone, or first.</source>
        <translation>Solo las imágenes de people, gear, photos, dock, sheets, phone o first.</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>The team&apos;s Book; made when missing.</source>
        <translation>El Libro del equipo; se crea si falta.</translation>
    </message>
    <message>
        <source>Name of the team of a new Book.</source>
        <translation>Nombre del equipo de un Libro nuevo.</translation>
    </message>
    <message>
        <source>Our team</source>
        <translation>Nuestro equipo</translation>
    </message>
</context>
<context>
    <name>snugline::models::AthleteModel</name>
    <message>
        <source>No helmet yet</source>
        <translation>Aún sin casco</translation>
    </message>
    <message>
        <source>Helmet %1, %2, %3</source>
        <comment>serial, model, size</comment>
        <translation>Casco %1, %2, %3</translation>
    </message>
    <message>
        <source>Nothing due</source>
        <translation>Nada pendiente</translation>
    </message>
    <message>
        <source>Nothing due. Next look from %1.</source>
        <translation>Nada pendiente. Próximo vistazo desde %1.</translation>
    </message>
    <message>
        <source>seen %1</source>
        <translation>visto %1</translation>
    </message>
    <message>
        <source>seen %1 by %2</source>
        <translation>visto %1 por %2</translation>
    </message>
    <message>
        <source>Not seen</source>
        <translation>Sin ver</translation>
    </message>
    <message>
        <source>%1, size %2</source>
        <translation>%1, talla %2</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Swap helmet</source>
        <translation>Cambiar de casco</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <comment>a day, initials</comment>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>Off the chart of this model</source>
        <translation>Fuera de la tabla de este modelo</translation>
    </message>
    <message>
        <source>Between sizes: try both, start with %1</source>
        <translation>Entre tallas: pruebe ambas, empiece con %1</translation>
    </message>
    <message>
        <source>Size %1</source>
        <translation>Talla %1</translation>
    </message>
    <message>
        <source>Head %1, give or take %2</source>
        <translation>Cabeza %1, más o menos %2</translation>
    </message>
    <message>
        <source>Reading in millimetres</source>
        <translation>Lectura en milímetros</translation>
    </message>
    <message>
        <source>Reading in inches</source>
        <translation>Lectura en pulgadas</translation>
    </message>
    <message>
        <source>Tape %1 above the eyebrows, level, round the back.</source>
        <translation>Cinta %1 sobre las cejas, nivelada, alrededor por atrás.</translation>
    </message>
    <message>
        <source>Take the tape off and read once more.</source>
        <translation>Quite la cinta y lea una vez más.</translation>
    </message>
    <message>
        <source>Readings differ by more than %1: take another.</source>
        <translation>Las lecturas difieren en más de %1: tome otra.</translation>
    </message>
    <message>
        <source>Readings agree. Done, or take another.</source>
        <translation>Las lecturas coinciden. Listo, o tome otra.</translation>
    </message>
    <message>
        <source>Set aside: %1</source>
        <translation>Apartada: %1</translation>
    </message>
    <message>
        <source>Readings differ by more than %1: take another. Until then no size is known.</source>
        <translation>Las lecturas difieren en más de %1: tome otra. Hasta entonces no se conoce la talla.</translation>
    </message>
    <message>
        <source>Reading recorded: %1</source>
        <translation>Se anotó la lectura: %1</translation>
    </message>
    <message>
        <source>the one before</source>
        <translation>la anterior</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>a reading, a day</comment>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>%1 is %2 more than %3. Read once more; what is wrong can be set aside.</source>
        <translation>%1 es %2 más que %3. Lea una vez más; lo que esté mal se puede apartar.</translation>
    </message>
    <message>
        <source>%1 is %2 less than %3. Read once more; what is wrong can be set aside.</source>
        <translation>%1 es %2 menos que %3. Lea una vez más; lo que esté mal se puede apartar.</translation>
    </message>
    <message>
        <source>Hardly any head of that age measures %1. Read once more; what is wrong can be set aside.</source>
        <translation>Casi ninguna cabeza de esa edad mide %1. Lea una vez más; lo que esté mal se puede apartar.</translation>
    </message>
    <message>
        <source>%1 stands apart from the others: set it aside, or take another.</source>
        <translation>%1 se aparta de las demás: apártela o tome otra.</translation>
    </message>
</context>
<context>
    <name>snugline::models::CollectModel</name>
    <message>
        <source>Taken in, on hold: %1</source>
        <translation>Recibido, retenido: %1</translation>
    </message>
    <message>
        <source>Handed in: %1</source>
        <translation>Entregado: %1</translation>
    </message>
    <message>
        <source>Marked as lost: %1</source>
        <translation>Marcado como perdido: %1</translation>
    </message>
    <message>
        <source>On hold: %1</source>
        <translation>Retenido: %1</translation>
    </message>
    <message>
        <source>Season %1</source>
        <translation>Temporada %1</translation>
    </message>
    <message>
        <source>No athlete has a helmet</source>
        <translation>Ningún casco está con atletas</translation>
    </message>
    <message>
        <source>%1 of %2 handed in</source>
        <translation>%1 de %2 entregados</translation>
    </message>
    <message>
        <source>Shelf: %1 of %2 seen</source>
        <translation>Estante: %1 de %2 vistos</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>serial, kind</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>It was with %1</source>
        <translation>Lo tenía %1</translation>
    </message>
    <message>
        <source>From the shelf</source>
        <translation>Del estante</translation>
    </message>
    <message>
        <source>It was lost and has come to light</source>
        <translation>Estaba perdido y apareció</translation>
    </message>
    <message>
        <source>It is back: its points are to be seen again</source>
        <translation>Volvió: hay que ver otra vez sus puntos</translation>
    </message>
    <message>
        <source>Taken in by its tag: say its model and size at the Dock</source>
        <translation>Recibido por su placa: diga su modelo y talla en Recepción</translation>
    </message>
    <message>
        <source>In already since %1</source>
        <translation>Ya entregado desde %1</translation>
    </message>
    <message>
        <source>%1 stands in the Book as away: %2. Is it back?</source>
        <translation>%1 está fuera según el Libro: %2. ¿Ya volvió?</translation>
    </message>
    <message>
        <source>%1 is not in the Book. It is put aside, and the line goes on.</source>
        <translation>%1 no está en el Libro. Se pone aparte, y la fila sigue.</translation>
    </message>
    <message>
        <source>%1 may mean these. Which one is it?</source>
        <translation>%1 puede ser uno de estos. ¿Cuál es?</translation>
    </message>
    <message>
        <source>off the roster</source>
        <translation>fuera del plantel</translation>
    </message>
    <message>
        <source>None is missing</source>
        <translation>No falta ninguno</translation>
    </message>
    <message numerus="yes">
        <source>%n still missing</source>
        <translation>
            <numerusform>Falta %n</numerusform>
            <numerusform>Faltan %n</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n with athletes</source>
        <translation>
            <numerusform>, %n con atletas</numerusform>
            <numerusform>, %n con atletas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::DockModel</name>
    <message>
        <source>Made %1</source>
        <translation>Hecho %1</translation>
    </message>
    <message>
        <source>Goes in service</source>
        <translation>Entra en servicio</translation>
    </message>
    <message>
        <source>This device has no room to keep what was touched. It stays on the glass only.</source>
        <translation>Este dispositivo no tiene espacio para guardar lo tocado. Queda solo en la pantalla.</translation>
    </message>
    <message>
        <source>Refused: %1</source>
        <translation>Rechazado: %1</translation>
    </message>
    <message>
        <source>Refused: the check digit of this tag does not agree. Scan it again, or type the serial from the plate.</source>
        <translation>Rechazado: el dígito de control de esta placa no coincide. Escanéela otra vez, o escriba la serie de la placa.</translation>
    </message>
    <message>
        <source>Say why it is held.</source>
        <translation>Diga por qué se retiene.</translation>
    </message>
    <message>
        <source>%1 is in service</source>
        <translation>%1 está en servicio</translation>
    </message>
    <message>
        <source>%1 is on hold</source>
        <translation>%1 está retenido</translation>
    </message>
    <message>
        <source>Lot %1</source>
        <translation>Lote %1</translation>
    </message>
    <message>
        <source>Found by its serial, not by its whole tag</source>
        <translation>Se encontró por su serie, no por su placa entera</translation>
    </message>
    <message>
        <source>German</source>
        <translation>alemán</translation>
    </message>
    <message>
        <source>French</source>
        <translation>francés</translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation>español</translation>
    </message>
    <message>
        <source>Capitals and small letters are the wrong way round: caps lock is on, here or on the scanner.</source>
        <translation>Las mayúsculas y las minúsculas están al revés: el bloqueo de mayúsculas está puesto, aquí o en el lector.</translation>
    </message>
    <message>
        <source>The scanner types as on another keyboard than this device (%1 here). Set both to the same one.</source>
        <translation>El lector escribe como en otro teclado que este dispositivo (aquí %1). Ponga los dos en el mismo.</translation>
    </message>
    <message>
        <source>%1 is the serial of several helmets. Which one is it?</source>
        <translation>%1 es la serie de varios cascos. ¿Cuál es?</translation>
    </message>
    <message>
        <source>Several helmets stand in the Book with this tag. Which one is it?</source>
        <translation>Varios cascos figuran en el Libro con esta placa. ¿Cuál es?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>serial, kind</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Refused: %1 looks like one of our own labels, and its last letter does not agree. Look at it again.</source>
        <translation>Rechazado: %1 parece una etiqueta nuestra y su última letra no coincide. Mírela otra vez.</translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s) kept</source>
        <translation>
            <numerusform>%n foto guardada</numerusform>
            <numerusform>%n fotos guardadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Say first what was done to it</source>
        <translation>Diga primero qué se le hizo</translation>
    </message>
    <message numerus="yes">
        <source>Unfinished: %n point(s) checked</source>
        <translation>
            <numerusform>Sin terminar: %n punto revisado</numerusform>
            <numerusform>Sin terminar: %n puntos revisados</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is off the table, unfinished. What was checked is kept: scan it again to go on.</source>
        <translation>%1 salió de la mesa sin terminar. Lo revisado se guarda: escanéelo de nuevo para seguir.</translation>
    </message>
    <message>
        <source>%1 has a sign where a serial mostly has a dash. A scanner that is set to another keyboard than this device types that.</source>
        <translation>%1 tiene un signo donde un número de serie suele llevar un guion. Así escribe un lector puesto en otro teclado que este dispositivo.</translation>
    </message>
    <message>
        <source>The scanner types as on another keyboard than this device (%1 there). Set both to the same one.</source>
        <translation>El lector escribe como en otro teclado que este dispositivo (allá %1). Ponga los dos en el mismo.</translation>
    </message>
    <message>
        <source>Only &quot;%1&quot; was read. Is that its whole serial?</source>
        <translation>Solo se leyó &quot;%1&quot;. ¿Es su número de serie completo?</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has neither a letter nor a digit. Is that its serial?</source>
        <translation>&quot;%1&quot; no tiene letras ni cifras. ¿Es su número de serie?</translation>
    </message>
</context>
<context>
    <name>snugline::models::DoorsModel</name>
    <message>
        <source>Nobody to see before practice</source>
        <translation>Nadie por ver antes de la práctica</translation>
    </message>
    <message numerus="yes">
        <source>%n to see before %1</source>
        <translation>
            <numerusform>%n por ver antes de las %1</numerusform>
            <numerusform>%n por ver antes de las %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to see</source>
        <translation>
            <numerusform>%n por ver</numerusform>
            <numerusform>%n por ver</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them: do not wear</source>
        <translation>
            <numerusform>%n de ellos: no usar</numerusform>
            <numerusform>%n de ellos: no usar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n athlete(s) said something nobody has seen to yet</source>
        <translation>
            <numerusform>%n atleta dijo algo que nadie ha atendido aún</numerusform>
            <numerusform>%n atletas dijeron algo que nadie ha atendido aún</numerusform>
        </translation>
    </message>
    <message>
        <source>Take helmets in, one scan after another</source>
        <translation>Recibir cascos, un escaneo tras otro</translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) on hold</source>
        <translation>
            <numerusform>%n casco retenido</numerusform>
            <numerusform>%n cascos retenidos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>athletes, helmets</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n athlete(s)</source>
        <translation>
            <numerusform>%n atleta</numerusform>
            <numerusform>%n atletas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n casco</numerusform>
            <numerusform>%n cascos</numerusform>
        </translation>
    </message>
    <message>
        <source>Who signs?</source>
        <translation>¿Quién firma?</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation>nadie aún</translation>
    </message>
    <message>
        <source>signs here</source>
        <translation>firma aquí</translation>
    </message>
    <message>
        <source>staff</source>
        <translation>personal</translation>
    </message>
    <message>
        <source>Season %1 is closed</source>
        <translation>La temporada %1 está cerrada</translation>
    </message>
    <message numerus="yes">
        <source>%n still on the Line</source>
        <translation>
            <numerusform>%n sigue en la Fila</numerusform>
            <numerusform>%n siguen en la Fila</numerusform>
        </translation>
    </message>
    <message>
        <source>Helmet bothering you? Show us where.</source>
        <translation>¿Te molesta el casco? Muéstranos dónde.</translation>
    </message>
    <message>
        <source>admin</source>
        <translation>responsable</translation>
    </message>
    <message>
        <source>helper</source>
        <translation>ayudante</translation>
    </message>
    <message>
        <source>%1, athletic trainer or designated health care professional</source>
        <comment>a role</comment>
        <translation>%1, entrenador atlético o entrenadora atlética (athletic trainer), o profesional de la salud designado</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a day, a time</comment>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>snugline::models::GaugeModel</name>
    <message>
        <source>There is no Bluetooth in this program. Type the value.</source>
        <translation>Este programa no tiene Bluetooth. Escriba el valor.</translation>
    </message>
    <message>
        <source>That gauge is no longer there. Look again.</source>
        <translation>Ese manómetro ya no está. Busque otra vez.</translation>
    </message>
    <message>
        <source>Chosen before</source>
        <translation>Elegido antes</translation>
    </message>
    <message>
        <source>Offers pressure</source>
        <translation>Ofrece presión</translation>
    </message>
    <message>
        <source>Does not say that it offers pressure</source>
        <translation>No dice que ofrezca presión</translation>
    </message>
    <message>
        <source>Without a name</source>
        <translation>Sin nombre</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>kPa</source>
        <translation>kPa</translation>
    </message>
    <message>
        <source>No reading yet</source>
        <translation>Aún sin lectura</translation>
    </message>
    <message>
        <source>No value</source>
        <translation>Sin valor</translation>
    </message>
    <message>
        <source>Rising</source>
        <translation>Sube</translation>
    </message>
    <message>
        <source>Falling</source>
        <translation>Baja</translation>
    </message>
    <message>
        <source>Not steady yet</source>
        <translation>Aún no es estable</translation>
    </message>
    <message>
        <source>Steady</source>
        <translation>Estable</translation>
    </message>
    <message>
        <source>Battery low, %1 %</source>
        <translation>Batería baja, %1 %</translation>
    </message>
    <message>
        <source>Battery %1 %</source>
        <translation>Batería %1 %</translation>
    </message>
    <message>
        <source>sensor %1</source>
        <comment>a temperature</comment>
        <translation>sensor %1</translation>
    </message>
    <message>
        <source>No gauge is chosen. Type the value, or choose one.</source>
        <translation>No hay manómetro elegido. Escriba el valor, o elija uno.</translation>
    </message>
    <message>
        <source>First the zero: hold the needle in open air, out of every bladder. The gauge reads the whole weight of the air; what it reads now is taken away from every reading after.</source>
        <translation>Primero el cero: sostenga la aguja al aire libre, fuera de toda vejiga. El manómetro lee todo el peso del aire; lo que marca ahora se resta de cada lectura siguiente.</translation>
    </message>
    <message>
        <source>Zeroed %1: open air reads %2</source>
        <translation>Puesto a cero %1: el aire libre marca %2</translation>
    </message>
</context>
<context>
    <name>snugline::models::GuideModel</name>
    <message>
        <source>%1 %2, %3</source>
        <comment>jersey, name, serial of the helmet</comment>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>Recorded: %1</source>
        <comment>a verdict</comment>
        <translation>Registrado: %1</translation>
    </message>
    <message>
        <source>Begun: %1</source>
        <comment>first fit, refit or look</comment>
        <translation>Se empezó: %1</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Who signs this check?</source>
        <translation>¿Quién firma esta revisión?</translation>
    </message>
    <message>
        <source>All answers are kept. The verdict carries the initials of whoever saw to it.</source>
        <translation>Todas las respuestas están guardadas. El resultado lleva las iniciales de quien se encargó.</translation>
    </message>
    <message>
        <source>Say who signs</source>
        <translation>Decir quién firma</translation>
    </message>
</context>
<context>
    <name>snugline::models::LanesModel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Practice of %1</source>
        <translation>Práctica del %1</translation>
    </message>
    <message>
        <source>Athletes without a helmet</source>
        <translation>Atletas sin casco</translation>
    </message>
    <message>
        <source>Helmets with an athlete, by the lane of the Line they stood in when the last practice of each week began. Worked out from the log as it is known now: what was taken back since is left out.</source>
        <translation>Cascos en manos de atletas, según el carril de la Fila en que estaban al empezar la última práctica de cada semana. Calculado del registro como se conoce ahora: lo que se retiró después no cuenta.</translation>
    </message>
    <message>
        <source>No helmet was with an athlete yet.</source>
        <translation>Ningún casco estaba todavía con un atleta.</translation>
    </message>
</context>
<context>
    <name>snugline::models::LineCheckModel</name>
    <message>
        <source>%1: %2</source>
        <comment>an athlete, why not in the line</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not here</source>
        <translation>no está</translation>
    </message>
    <message>
        <source>Nobody stands in this lane because of the air.</source>
        <translation>Nadie está en este carril por el aire.</translation>
    </message>
    <message numerus="yes">
        <source>%n in the line. Go along it: brow, straps, hold. Touch only what is off.</source>
        <translation>
            <numerusform>%n en la fila. Recórrala: frente, correas, sujeción. Toque solo lo que está mal.</numerusform>
            <numerusform>%n en la fila. Recórrala: frente, correas, sujeción. Toque solo lo que está mal.</numerusform>
        </translation>
    </message>
    <message>
        <source>Note what was touched</source>
        <translation>Anotar lo tocado</translation>
    </message>
    <message numerus="yes">
        <source>Brow, straps and hold seen in line: %n, all snug.</source>
        <translation>
            <numerusform>Frente, correas y sujeción vistas en fila: %n, bien ajustado.</numerusform>
            <numerusform>Frente, correas y sujeción vistas en fila: %n, todos bien ajustados.</numerusform>
        </translation>
    </message>
    <message>
        <source>Brow, straps and hold seen in line: %1, and %2 with something off.</source>
        <translation>Frente, correas y sujeción vistas en fila: %1, y %2 con algo mal.</translation>
    </message>
    <message>
        <source>snug</source>
        <translation>ajusta bien</translation>
    </message>
    <message>
        <source>%1 Screen %2 of %3.</source>
        <comment>what to do, which screen</comment>
        <translation>%1 Pantalla %2 de %3.</translation>
    </message>
    <message numerus="yes">
        <source>These %n: checked</source>
        <translation>
            <numerusform>Este %n: revisado</numerusform>
            <numerusform>Estos %n: revisados</numerusform>
        </translation>
    </message>
    <message>
        <source>None of these is here: go on</source>
        <translation>No está ninguno: seguir</translation>
    </message>
    <message numerus="yes">
        <source>and %n with something off</source>
        <translation>
            <numerusform>y %n con algo fuera de lugar</numerusform>
            <numerusform>y %n con algo fuera de lugar</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::LineModel</name>
    <message>
        <source>%1, %2</source>
        <comment>a lane of the board, count</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Next look %1</source>
        <translation>Próximo vistazo %1</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, practice at %2</source>
        <translation>%1, práctica a las %2</translation>
    </message>
    <message>
        <source>%1, next practice %2 at %3</source>
        <translation>%1, próxima práctica %2 a las %3</translation>
    </message>
    <message numerus="yes">
        <source>%n before practice</source>
        <translation>
            <numerusform>%n antes de la práctica</numerusform>
            <numerusform>%n antes de la práctica</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n weekly look(s)</source>
        <translation>
            <numerusform>%n vistazo semanal</numerusform>
            <numerusform>%n vistazos semanales</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n in this lane because of the air</source>
        <translation>
            <numerusform>%n en este carril por el aire</numerusform>
            <numerusform>%n en este carril por el aire</numerusform>
        </translation>
    </message>
    <message>
        <source>The last of the line</source>
        <translation>Último de la fila</translation>
    </message>
    <message numerus="yes">
        <source>%n more after this one</source>
        <translation>
            <numerusform>%n más después de este</numerusform>
            <numerusform>%n más después de este</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, no season is open</source>
        <translation>%1, no hay temporada abierta</translation>
    </message>
    <message>
        <source>Season %1 is closed and no other is open. No looks are due and nobody is asked for a helmet; helmets still with athletes stay here.</source>
        <translation>La temporada %1 está cerrada y no hay otra abierta. No toca ningún vistazo ni se le pide casco a nadie; los cascos que aún tienen atletas siguen aquí.</translation>
    </message>
    <message numerus="yes">
        <source>%n because of the weather alone</source>
        <translation>
            <numerusform>%n solo por el tiempo</numerusform>
            <numerusform>%n solo por el tiempo</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>a day, a time</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The clock of this tablet is not right, or was not: it has an entry of %1.</source>
        <translation>El reloj de esta tableta no va bien, o no iba: tiene una anotación del %1.</translation>
    </message>
    <message>
        <source>The clock of another device is far off: it has an entry of %1.</source>
        <translation>El reloj de otro dispositivo va muy mal: tiene una anotación del %1.</translation>
    </message>
    <message>
        <source>The clock of another device is far off: it has an entry by %1 of %2.</source>
        <translation>El reloj de otro dispositivo va muy mal: tiene una anotación de %1 del %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n: do not wear</source>
        <translation>
            <numerusform>%n: no usar</numerusform>
            <numerusform>%n: no usar</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::LockModel</name>
    <message>
        <source>Wait %1, then try again. The wait runs only while Snugline is open.</source>
        <translation>Espere %1 e intente de nuevo. La espera corre solo mientras Snugline está abierto.</translation>
    </message>
    <message>
        <source>That is not the code.</source>
        <translation>Ese no es el código.</translation>
    </message>
    <message>
        <source>That code is too easy to guess: not one digit over and over, nor a straight run.</source>
        <translation>Ese código es muy fácil de adivinar: ni un solo dígito repetido, ni una serie seguida.</translation>
    </message>
    <message>
        <source>A code has %1 to %2 digits.</source>
        <translation>Un código tiene de %1 a %2 dígitos.</translation>
    </message>
    <message>
        <source>The two were not the same. Begin again.</source>
        <translation>No eran iguales. Empiece de nuevo.</translation>
    </message>
    <message>
        <source>That code cannot be taken. Choose another.</source>
        <translation>Ese código no se puede tomar. Elija otro.</translation>
    </message>
    <message>
        <source>An admin with a code of their own gives another a code.</source>
        <translation>Una persona responsable con código propio da un código a otra.</translation>
    </message>
</context>
<context>
    <name>snugline::models::MatchingModel</name>
    <message>
        <source>No helmet, %1</source>
        <translation>Sin casco, %1</translation>
    </message>
    <message>
        <source>Another helmet than now, %1</source>
        <translation>Otro casco que ahora, %1</translation>
    </message>
    <message>
        <source>As now, %1</source>
        <translation>Como ahora, %1</translation>
    </message>
    <message>
        <source>Pins that cannot be</source>
        <translation>Pares fijados que no pueden ser</translation>
    </message>
    <message>
        <source>%1: the helmet is barred</source>
        <translation>%1: el casco no se puede dar</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>En el estante</translation>
    </message>
    <message>
        <source>Short</source>
        <translation>Faltan</translation>
    </message>
    <message>
        <source>Nothing.</source>
        <translation>Nada.</translation>
    </message>
    <message>
        <source>Spare</source>
        <translation>Sobran</translation>
    </message>
    <message>
        <source>%1 cannot be given</source>
        <translation>%1 no se puede dar</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>what keeps it, model and size</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Nobody is on the roster yet.</source>
        <translation>Aún no hay nadie en el plantel.</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n heads have a helmet that can be given.</source>
        <translation>
            <numerusform>%1 de %n cabeza tiene un casco que se puede dar.</numerusform>
            <numerusform>%1 de %n cabezas tienen un casco que se puede dar.</numerusform>
        </translation>
    </message>
    <message>
        <source>Certified through %1, in service, and of a size that is likely.</source>
        <translation>Certificado hasta el %1, en servicio y de una talla probable.</translation>
    </message>
    <message>
        <source>The season&apos;s end is not set: certified today, in service, and of a size that is likely.</source>
        <translation>El fin de la temporada no está puesto: certificado hoy, en servicio y de una talla probable.</translation>
    </message>
    <message>
        <source>−ln %1</source>
        <translation>−ln %1</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Suma</translation>
    </message>
    <message>
        <source>What this pair costs</source>
        <translation>Lo que cuesta este par</translation>
    </message>
    <message>
        <source>As many heads as possible come first, then the least sum over all pairs. Nothing is written down here.</source>
        <translation>Primero, tantas cabezas como sea posible; después, la menor suma de todos los pares. Aquí no se anota nada.</translation>
    </message>
    <message>
        <source>A size by the tape is where to start. The fit on the head decides.</source>
        <translation>La talla por la cinta es por dónde empezar. Decide el ajuste en la cabeza.</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>an athlete, a helmet</comment>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>Pinned: %1, %2</source>
        <translation>Fijado: %1, %2</translation>
    </message>
    <message>
        <source>Set aside: %1, %2</source>
        <translation>Apartado: %1, %2</translation>
    </message>
</context>
<context>
    <name>snugline::models::NfcModel</name>
    <message>
        <source>NFC is turned off on this device. Turn it on in its settings, or scan the tag another way.</source>
        <translation>El NFC de este dispositivo está apagado. Enciéndalo en los ajustes, o escanee la placa de otra manera.</translation>
    </message>
    <message>
        <source>The NFC reader stopped. Turn it off and on again, or scan the tag another way.</source>
        <translation>El lector NFC se detuvo. Apáguelo y enciéndalo otra vez, o escanee la placa de otra manera.</translation>
    </message>
    <message>
        <source>This NFC tag was never written. Type the serial from the plate.</source>
        <translation>Esta placa NFC nunca se grabó. Escriba la serie que lleva el casco.</translation>
    </message>
    <message>
        <source>The tag went away before it was read. Hold it still for a second.</source>
        <translation>La placa se apartó antes de leerse. Manténgala quieta un segundo.</translation>
    </message>
    <message>
        <source>This NFC tag does not answer. Hold it still once more, or type the serial from the plate.</source>
        <translation>Esta placa NFC no responde. Manténgala quieta otra vez, o escriba la serie que lleva el casco.</translation>
    </message>
    <message>
        <source>Hold this device to the tag.</source>
        <translation>Acerque este dispositivo a la placa.</translation>
    </message>
    <message>
        <source>This NFC tag is empty. Type the serial from the plate.</source>
        <translation>Esta placa NFC está vacía. Escriba la serie que lleva el casco.</translation>
    </message>
    <message>
        <source>This NFC tag holds an advertisement (a smart poster) and no serial. Type the serial from the plate.</source>
        <translation>Esta placa NFC lleva un anuncio (smart poster) y ninguna serie. Escriba la serie que lleva el casco.</translation>
    </message>
    <message>
        <source>This NFC tag holds something else than a serial. Type the serial from the plate.</source>
        <translation>Esta placa NFC lleva otra cosa que una serie. Escriba la serie que lleva el casco.</translation>
    </message>
    <message>
        <source>The words on this NFC tag are damaged: they are no text. Type the serial from the plate.</source>
        <translation>Las palabras de esta placa NFC están dañadas: no son texto. Escriba la serie que lleva el casco.</translation>
    </message>
    <message>
        <source>The words on this NFC tag are cut short. Type the serial from the plate.</source>
        <translation>Las palabras de esta placa NFC están cortadas. Escriba la serie que lleva el casco.</translation>
    </message>
    <message>
        <source>The words on this NFC tag are too long for a serial. Type the serial from the plate.</source>
        <translation>Las palabras de esta placa NFC son demasiado largas para una serie. Escriba la serie que lleva el casco.</translation>
    </message>
    <message>
        <source>Refused: %1</source>
        <translation>Rechazado: %1</translation>
    </message>
</context>
<context>
    <name>snugline::models::NoticeModel</name>
    <message>
        <source>%1, %2</source>
        <comment>serial, kind</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No helmet is held for it now</source>
        <translation>Ahora no hay ningún casco retenido por eso</translation>
    </message>
    <message>
        <source>Still held: %1</source>
        <translation>Aún retenidos: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n casco</numerusform>
            <numerusform>%n cascos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n with athletes</source>
        <translation>
            <numerusform>, %n en uso</numerusform>
            <numerusform>, %n en uso</numerusform>
        </translation>
    </message>
    <message>
        <source>Held for the notice: %1</source>
        <translation>Retenidos por el aviso: %1</translation>
    </message>
</context>
<context>
    <name>snugline::models::PastModel</name>
    <message>
        <source>%1 to %2</source>
        <translation>del %1 al %2</translation>
    </message>
    <message>
        <source>closed on %1</source>
        <translation>cerrada el %1</translation>
    </message>
    <message>
        <source>never closed</source>
        <translation>nunca se cerró</translation>
    </message>
    <message>
        <source>A helmet that is not in the Book</source>
        <translation>Un casco que no está en el Libro</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>serial, kind</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n missing at the close</source>
        <translation>
            <numerusform>%n faltaba al cerrar</numerusform>
            <numerusform>%n faltaban al cerrar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n turned up since</source>
        <translation>
            <numerusform>, %n apareció después</numerusform>
            <numerusform>, %n aparecieron después</numerusform>
        </translation>
    </message>
    <message>
        <source>Season %1</source>
        <translation>Temporada %1</translation>
    </message>
    <message numerus="yes">
        <source>%n athlete(s)</source>
        <translation>
            <numerusform>%n atleta</numerusform>
            <numerusform>%n atletas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n casco</numerusform>
            <numerusform>%n cascos</numerusform>
        </translation>
    </message>
    <message>
        <source>No season was closed yet.</source>
        <translation>Todavía no se cerró ninguna temporada.</translation>
    </message>
    <message>
        <source>Athletes who had a helmet</source>
        <translation>Atletas que tuvieron casco</translation>
    </message>
    <message>
        <source>Helmets that were with athletes</source>
        <translation>Cascos que estuvieron con atletas</translation>
    </message>
    <message>
        <source>Checks: fits</source>
        <translation>Revisiones: queda bien</translation>
    </message>
    <message>
        <source>Checks: adjust</source>
        <translation>Revisiones: por ajustar</translation>
    </message>
    <message>
        <source>Checks: do not wear</source>
        <translation>Revisiones: no usar</translation>
    </message>
    <message>
        <source>Checks left unfinished</source>
        <translation>Revisiones sin terminar</translation>
    </message>
    <message>
        <source>Seen in a standing line</source>
        <translation>Vistos en una revisión en fila</translation>
    </message>
    <message>
        <source>Words of athletes about fit and gear</source>
        <translation>Lo que dijeron atletas sobre ajuste y equipo</translation>
    </message>
    <message>
        <source>Holds begun</source>
        <translation>Retenciones iniciadas</translation>
    </message>
    <message>
        <source>Points seen at fault</source>
        <translation>Puntos vistos con falla</translation>
    </message>
    <message>
        <source>Helmets handed in</source>
        <translation>Cascos entregados</translation>
    </message>
    <message>
        <source>Marked as lost</source>
        <translation>Marcados como perdidos</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Retirados</translation>
    </message>
    <message>
        <source>It was with %1</source>
        <translation>Lo tenía %1</translation>
    </message>
    <message>
        <source>turned up on %1</source>
        <translation>apareció el %1</translation>
    </message>
    <message>
        <source>not seen since</source>
        <translation>no se ha visto desde entonces</translation>
    </message>
    <message>
        <source>%1 to %2, handed in</source>
        <translation>del %1 al %2, entregado</translation>
    </message>
    <message>
        <source>from %1, not handed in</source>
        <translation>desde el %1, no se entregó</translation>
    </message>
    <message numerus="yes">
        <source>%n check(s)</source>
        <translation>
            <numerusform>%n revisión</numerusform>
            <numerusform>%n revisiones</numerusform>
        </translation>
    </message>
    <message>
        <source>the last: %1</source>
        <translation>la última: %1</translation>
    </message>
    <message>
        <source>Somebody who is not in the Book</source>
        <translation>Alguien que no está en el Libro</translation>
    </message>
    <message>
        <source>Name kept back</source>
        <translation>Nombre reservado</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>Family name</source>
        <translation>Apellido</translation>
    </message>
    <message>
        <source>Given name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Helmet</source>
        <translation>Casco</translation>
    </message>
    <message>
        <source>Model</source>
        <translation>Modelo</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Talla</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Handed in</source>
        <translation>Entregado</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Revisiones</translation>
    </message>
    <message>
        <source>Last check</source>
        <translation>Última revisión</translation>
    </message>
    <message>
        <source>Seen in line</source>
        <translation>Visto en fila</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
</context>
<context>
    <name>snugline::models::PhoneModel</name>
    <message>
        <source>Staff have not answered yet. Give them your first file.</source>
        <translation>El personal aún no responde. Entrega tu primer archivo.</translation>
    </message>
    <message>
        <source>Staff see your helmet by %1.</source>
        <comment>a day</comment>
        <translation>El personal revisa tu casco a más tardar %1.</translation>
    </message>
    <message>
        <source>Next look from %1.</source>
        <comment>a day</comment>
        <translation>Próximo vistazo desde %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n report(s) that staff do not have yet</source>
        <translation>
            <numerusform>%n reporte que el personal aún no tiene</numerusform>
            <numerusform>%n reportes que el personal aún no tiene</numerusform>
        </translation>
    </message>
    <message>
        <source>Written: %1. Give this file to staff.</source>
        <comment>a file</comment>
        <translation>Escrito: %1. Entrega este archivo al personal.</translation>
    </message>
    <message>
        <source>The answer of the staff is here.</source>
        <translation>La respuesta del personal está aquí.</translation>
    </message>
</context>
<context>
    <name>snugline::models::PhoneSay</name>
    <message>
        <source>Kept on this phone. Staff see it once they have the file from you. If it gets worse, take the helmet off and tell them.</source>
        <translation>Guardado en este teléfono. El personal lo ve cuando recibe tu archivo. Si empeora, quítate el casco y avisa.</translation>
    </message>
    <message>
        <source>Do not wear this helmet. Hand it to staff now.</source>
        <translation>No uses este casco. Entrégalo ya al personal.</translation>
    </message>
</context>
<context>
    <name>snugline::models::PhonesModel</name>
    <message>
        <source>%1 %2</source>
        <comment>jersey, name</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No phone has joined.</source>
        <translation>Ningún teléfono se ha unido.</translation>
    </message>
    <message>
        <source>A code was given out %1.</source>
        <comment>a day</comment>
        <translation>Se dio un código el %1.</translation>
    </message>
    <message>
        <source>No athlete has a phone of their own here</source>
        <translation>Aquí nadie tiene un teléfono propio unido</translation>
    </message>
    <message numerus="yes">
        <source>%n athlete(s) with a phone of their own</source>
        <translation>
            <numerusform>%n atleta con teléfono propio</numerusform>
            <numerusform>%n atletas con teléfono propio</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing more is taken from that phone.</source>
        <translation>Ya no se recibe nada de ese teléfono.</translation>
    </message>
    <message>
        <source>Nothing new from number %1.</source>
        <translation>Nada nuevo del número %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n new report(s) from number %1.</source>
        <translation>
            <numerusform>%n reporte nuevo del número %1.</numerusform>
            <numerusform>%n reportes nuevos del número %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 The answer for the phone: %2</source>
        <comment>how many, a file</comment>
        <translation>%1 La respuesta para el teléfono: %2</translation>
    </message>
</context>
<context>
    <name>snugline::models::PhotoAlbum</name>
    <message>
        <source>The photo is taken back, but its file could not be deleted yet. That is tried again when the Book is next opened.</source>
        <translation>La foto se retiró, pero su archivo aún no se pudo borrar. Se intentará de nuevo la próxima vez que se abra el Libro.</translation>
    </message>
</context>
<context>
    <name>snugline::models::PhotoModel</name>
    <message>
        <source>%1, %2</source>
        <comment>a serial, its model and size</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No camera can be used by this program. Choose a picture file.</source>
        <translation>Este programa no puede usar ninguna cámara. Elija un archivo de imagen.</translation>
    </message>
    <message>
        <source>The photo is kept with %1.</source>
        <translation>La foto queda guardada con %1.</translation>
    </message>
</context>
<context>
    <name>snugline::models::PlanModel</name>
    <message>
        <source>This season %1, the next %2</source>
        <comment>years</comment>
        <translation>Esta temporada %1, la próxima %2</translation>
    </message>
    <message numerus="yes">
        <source>%n week(s)</source>
        <translation>
            <numerusform>%n semana</numerusform>
            <numerusform>%n semanas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s), %1</source>
        <translation>
            <numerusform>%n casco, %1</numerusform>
            <numerusform>%n cascos, %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>; %n past their age limit</source>
        <translation>
            <numerusform>; %n pasa su límite de edad</numerusform>
            <numerusform>; %n pasan su límite de edad</numerusform>
        </translation>
    </message>
    <message>
        <source>Before today</source>
        <translation>Antes de hoy</translation>
    </message>
    <message>
        <source>Send %1, back %2</source>
        <translation>Enviar %1, vuelta %2</translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s): %1</source>
        <translation>
            <numerusform>%n casco: %1</numerusform>
            <numerusform>%n cascos: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 short of %2</source>
        <comment>how many, of what</comment>
        <translation>Faltan %1 de %2</translation>
    </message>
    <message>
        <source>%1 to %2, whatever is sent</source>
        <translation>%1 a %2, se envíe lo que se envíe</translation>
    </message>
    <message>
        <source>Order %1 of %2</source>
        <comment>how many, of what</comment>
        <translation>Pedir %1 de %2</translation>
    </message>
    <message>
        <source>No more of %1</source>
        <translation>No más de %1</translation>
    </message>
    <message>
        <source>%1 enough</source>
        <translation>%1 alcanzan</translation>
    </message>
    <message>
        <source>%1 good</source>
        <translation>%1 buenos</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>%1 certified</source>
        <translation>%1 certificados</translation>
    </message>
    <message>
        <source>%1 lapsed</source>
        <translation>%1 vencidos</translation>
    </message>
    <message>
        <source>Not read</source>
        <translation>Sin leer</translation>
    </message>
    <message>
        <source>%1 without a label that is known</source>
        <translation>%1 sin una etiqueta conocida</translation>
    </message>
</context>
<context>
    <name>snugline::models::PrivacyModel</name>
    <message>
        <source>No name is kept back now.</source>
        <translation>Ahora no se oculta ningún nombre.</translation>
    </message>
    <message numerus="yes">
        <source>%n name(s) are kept back now.</source>
        <translation>
            <numerusform>Ahora se oculta %n nombre.</numerusform>
            <numerusform>Ahora se ocultan %n nombres.</numerusform>
        </translation>
    </message>
    <message>
        <source>Name kept back since %1. The log still holds it.</source>
        <translation>Nombre oculto desde el %1. El registro lo conserva.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Entrada</translation>
    </message>
    <message>
        <source>An admin changes this.</source>
        <translation>Esto lo cambia una persona responsable.</translation>
    </message>
</context>
<context>
    <name>snugline::models::RecoveryModel</name>
    <message>
        <source>Group %1 has a mistyped digit.</source>
        <translation>El grupo %1 tiene un dígito mal escrito.</translation>
    </message>
    <message>
        <source>The key has %1 digits in %2 groups.</source>
        <translation>La clave tiene %1 dígitos en %2 grupos.</translation>
    </message>
    <message>
        <source>That is not the key of the sheet made last. Older sheets are void.</source>
        <translation>Esa no es la clave de la última hoja. Las hojas anteriores no valen.</translation>
    </message>
    <message>
        <source>The two were not the same. Begin again.</source>
        <translation>No eran iguales. Empiece de nuevo.</translation>
    </message>
    <message>
        <source>Made %1</source>
        <translation>Hecha el %1</translation>
    </message>
    <message>
        <source>Made %1 by %2</source>
        <translation>Hecha el %1 por %2</translation>
    </message>
    <message>
        <source>An admin makes a recovery sheet.</source>
        <translation>La hoja de recuperación la hace una persona responsable.</translation>
    </message>
</context>
<context>
    <name>snugline::models::RightsModel</name>
    <message>
        <source>Staff do this: %1</source>
        <comment>initials</comment>
        <translation>Esto lo hace el personal: %1</translation>
    </message>
    <message>
        <source>An admin does this: %1</source>
        <comment>initials</comment>
        <translation>Esto lo hace una persona responsable: %1</translation>
    </message>
    <message>
        <source>An athletic trainer or designated health care professional does this. An admin marks who is one, under People</source>
        <translation>Esto lo hace un entrenador atlético o una entrenadora atlética (athletic trainer), o profesional de la salud designado. Una persona responsable marca quién lo es, en Personas</translation>
    </message>
    <message>
        <source>An athletic trainer or designated health care professional does this: %1</source>
        <comment>initials</comment>
        <translation>Esto lo hace un entrenador atlético o una entrenadora atlética (athletic trainer), o profesional de la salud designado: %1</translation>
    </message>
</context>
<context>
    <name>snugline::models::RosterImport</name>
    <message>
        <source>%1 %2</source>
        <comment>jersey, name</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>jersey %1</source>
        <translation>camiseta %1</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>birth year %1</source>
        <translation>año de nacimiento %1</translation>
    </message>
    <message>
        <source>back on the roster</source>
        <translation>de vuelta en el plantel</translation>
    </message>
    <message>
        <source>off the roster</source>
        <translation>fuera del plantel</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between changes</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>commas</source>
        <translation>comas</translation>
    </message>
    <message>
        <source>semicolons</source>
        <translation>punto y coma</translation>
    </message>
    <message>
        <source>tabs</source>
        <translation>tabulaciones</translation>
    </message>
    <message>
        <source>%1, separated by %2</source>
        <translation>%1, separado por %2</translation>
    </message>
    <message>
        <source>%1 is taken in: %2 added, %3 changed, %4 unchanged.</source>
        <translation>%1 está cargado: %2 agregados, %3 cambiados, %4 sin cambios.</translation>
    </message>
    <message>
        <source>Refused rows stayed out: %1.</source>
        <translation>Renglones rechazados que quedaron fuera: %1.</translation>
    </message>
    <message>
        <source>It is right</source>
        <translation>Está bien</translation>
    </message>
    <message>
        <source>Leave the head out</source>
        <translation>Dejar fuera la cabeza</translation>
    </message>
    <message>
        <source>Leave the year out</source>
        <translation>Dejar fuera el año</translation>
    </message>
    <message>
        <source>Both have it</source>
        <translation>Los dos lo tienen</translation>
    </message>
    <message>
        <source>Leave the number out</source>
        <translation>Dejar fuera el número</translation>
    </message>
</context>
<context>
    <name>snugline::models::RosterModel</name>
    <message>
        <source>Head not taped yet</source>
        <translation>Cabeza aún sin medir</translation>
    </message>
    <message>
        <source>Head %1 on %2: tape again</source>
        <translation>Cabeza %1 el %2: medir otra vez</translation>
    </message>
    <message>
        <source>Head %1 on %2</source>
        <translation>Cabeza %1 el %2</translation>
    </message>
    <message>
        <source>No helmet</source>
        <translation>Sin casco</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between serials</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a birth year</source>
        <translation>&quot;%1&quot; no es un año de nacimiento</translation>
    </message>
    <message>
        <source>Name kept back since %1</source>
        <translation>Nombre oculto desde el %1</translation>
    </message>
    <message>
        <source>Head readings of %1 disagree: take another</source>
        <translation>Las lecturas de la cabeza del %1 no coinciden: tome otra</translation>
    </message>
    <message>
        <source>Added: %1</source>
        <translation>Se añadió al plantel: %1</translation>
    </message>
    <message>
        <source>Changed: %1</source>
        <translation>Se cambió: %1</translation>
    </message>
</context>
<context>
    <name>snugline::models::SayModel</name>
    <message>
        <source>Forehead</source>
        <translation>Frente</translation>
    </message>
    <message>
        <source>Left ear</source>
        <translation>Oreja izquierda</translation>
    </message>
    <message>
        <source>Right ear</source>
        <translation>Oreja derecha</translation>
    </message>
    <message>
        <source>Neck</source>
        <translation>Nuca</translation>
    </message>
    <message>
        <source>Chin</source>
        <translation>Mentón</translation>
    </message>
    <message>
        <source>Straps</source>
        <translation>Correas</translation>
    </message>
    <message>
        <source>Left cheek</source>
        <translation>Mejilla izquierda</translation>
    </message>
    <message>
        <source>Right cheek</source>
        <translation>Mejilla derecha</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Arriba</translation>
    </message>
    <message>
        <source>Left side</source>
        <translation>Lado izquierdo</translation>
    </message>
    <message>
        <source>Right side</source>
        <translation>Lado derecho</translation>
    </message>
    <message>
        <source>Touch where</source>
        <translation>Toca dónde</translation>
    </message>
    <message>
        <source>%1: what is it?</source>
        <comment>a place</comment>
        <translation>%1: ¿qué pasa?</translation>
    </message>
    <message>
        <source>Hair changed</source>
        <translation>Cambió el cabello</translation>
    </message>
    <message>
        <source>Something broke</source>
        <translation>Algo se rompió</translation>
    </message>
    <message>
        <source>%1. &quot;%2&quot;</source>
        <comment>what was touched, own words</comment>
        <translation>%1. &quot;%2&quot;</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>day, time</comment>
        <translation>%1 a las %2</translation>
    </message>
    <message>
        <source>You have no helmet in the Book yet. Staff see to it before the next practice, %1.</source>
        <translation>Aún no tienes casco en el Libro. El personal lo atiende antes de la próxima práctica, %1.</translation>
    </message>
    <message>
        <source>Staff look at it before the next practice, %1. If it gets worse, take the helmet off and tell them.</source>
        <translation>El personal lo revisa antes de la próxima práctica, %1. Si empeora, quítate el casco y avisa.</translation>
    </message>
    <message>
        <source>Español</source>
        <translation>Español</translation>
    </message>
    <message>
        <source>English</source>
        <translation>English</translation>
    </message>
    <message>
        <source>No helmet prevents concussion. A headache, dizzy, or took a hit: stop and tell an adult now.</source>
        <translation>Ningún casco previene la conmoción cerebral. Dolor de cabeza, mareo o un golpe: para y avísale ya a un adulto.</translation>
    </message>
    <message>
        <source>%1: tight or pinches</source>
        <comment>a place</comment>
        <translation>%1: aprieta o pellizca</translation>
    </message>
    <message>
        <source>%1: loose or moves</source>
        <comment>a place</comment>
        <translation>%1: flojo o se mueve</translation>
    </message>
    <message>
        <source>Something broke: %1</source>
        <comment>a place</comment>
        <translation>Algo se rompió: %1</translation>
    </message>
    <message>
        <source>Do not wear this helmet. Hand it to staff now.</source>
        <translation>No uses este casco. Entrégalo ya al personal.</translation>
    </message>
    <message>
        <source>All over</source>
        <translation>Por todas partes</translation>
    </message>
    <message>
        <source>Your forehead</source>
        <translation>Tu frente</translation>
    </message>
    <message>
        <source>Your left ear</source>
        <translation>Tu oído izquierdo</translation>
    </message>
    <message>
        <source>Your right ear</source>
        <translation>Tu oído derecho</translation>
    </message>
    <message>
        <source>Your neck</source>
        <translation>Tu nuca</translation>
    </message>
    <message>
        <source>Your chin</source>
        <translation>Tu mentón</translation>
    </message>
    <message>
        <source>The straps</source>
        <translation>Las correas</translation>
    </message>
    <message>
        <source>Your left cheek</source>
        <translation>Tu mejilla izquierda</translation>
    </message>
    <message>
        <source>Your right cheek</source>
        <translation>Tu mejilla derecha</translation>
    </message>
    <message>
        <source>The top of your head</source>
        <translation>La parte de arriba de tu cabeza</translation>
    </message>
    <message>
        <source>The left side of your head</source>
        <translation>El lado izquierdo de tu cabeza</translation>
    </message>
    <message>
        <source>The right side of your head</source>
        <translation>El lado derecho de tu cabeza</translation>
    </message>
</context>
<context>
    <name>snugline::models::ScanModel</name>
    <message>
        <source>No camera can be used by this program. Type the tag, or use a hand scanner.</source>
        <translation>Este programa no puede usar ninguna cámara. Escriba la placa, o use un lector de mano.</translation>
    </message>
    <message>
        <source>The camera is starting.</source>
        <translation>La cámara está arrancando.</translation>
    </message>
    <message>
        <source>There is a tag, and it cannot be read: dirty, damaged or not sharp. Wipe it, come nearer, or type its serial.</source>
        <translation>Hay una placa y no se puede leer: sucia, dañada o borrosa. Límpiela, acérquese, o escriba su serie.</translation>
    </message>
    <message>
        <source>Hold the tag in the frame.</source>
        <translation>Ponga la placa dentro del marco.</translation>
    </message>
    <message>
        <source>This device has no camera. Type the tag, or use a hand scanner.</source>
        <translation>Este dispositivo no tiene cámara. Escriba la placa, o use un lector de mano.</translation>
    </message>
    <message>
        <source>The camera may not be used. Allow it in the settings of this device, or type the tag.</source>
        <translation>No se permite usar la cámara. Permítalo en los ajustes de este dispositivo, o escriba la placa.</translation>
    </message>
    <message>
        <source>Another program has the camera. Close it there, or type the tag.</source>
        <translation>Otro programa tiene la cámara. Ciérrela allí, o escriba la placa.</translation>
    </message>
    <message>
        <source>The camera stopped. Turn it off and on again, or type the tag.</source>
        <translation>La cámara se detuvo. Apáguela y enciéndala otra vez, o escriba la placa.</translation>
    </message>
    <message>
        <source>Every number of this device is given. Print the sheet on another device.</source>
        <translation>Ya se dieron todos los números de este dispositivo. Imprima la hoja en otro dispositivo.</translation>
    </message>
    <message>
        <source>Snugline labels %1.pdf</source>
        <translation>Etiquetas de Snugline %1.pdf</translation>
    </message>
    <message>
        <source>%1. Serial tags %2 to %3</source>
        <translation>%1. Placas de serie de %2 a %3</translation>
    </message>
    <message numerus="yes">
        <source>%n label(s) to print: %1</source>
        <translation>
            <numerusform>%n etiqueta para imprimir: %1</numerusform>
            <numerusform>%n etiquetas para imprimir: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>snugline::models::SeasonModel</name>
    <message>
        <source>Nothing said again and again</source>
        <translation>Nada dicho una y otra vez</translation>
    </message>
    <message numerus="yes">
        <source>%n places said again and again</source>
        <translation>
            <numerusform>%n lugar dicho una y otra vez</numerusform>
            <numerusform>%n lugares dichos una y otra vez</numerusform>
        </translation>
    </message>
    <message>
        <source>The same place on %1 days by one athlete, or by %2 athletes in one model. Pads and air may not reach the cause: try another size or model, and ask the maker.</source>
        <translation>El mismo lugar en %1 días por una persona, o por %2 atletas en un modelo. Puede que las almohadillas y el aire no lleguen a la causa: pruebe otra talla u otro modelo, y pregunte al fabricante.</translation>
    </message>
    <message>
        <source>%1 sound</source>
        <translation>%1 en buen estado</translation>
    </message>
    <message>
        <source>%1 at fault</source>
        <translation>%1 con falla</translation>
    </message>
    <message>
        <source>%1 not seen</source>
        <translation>%1 sin ver</translation>
    </message>
    <message>
        <source>Same day</source>
        <translation>El mismo día</translation>
    </message>
    <message>
        <source>After 1 day</source>
        <translation>A 1 día</translation>
    </message>
    <message>
        <source>After 2 days</source>
        <translation>A 2 días</translation>
    </message>
    <message>
        <source>After 3 days</source>
        <translation>A 3 días</translation>
    </message>
    <message>
        <source>After more</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>None yet</source>
        <translation>Ninguno aún</translation>
    </message>
</context>
<context>
    <name>snugline::models::SettingsModel</name>
    <message>
        <source>%1 %2, season %3</source>
        <translation>%1 %2, temporada %3</translation>
    </message>
    <message>
        <source>Athletes %1, helmets %2, model sheets %3</source>
        <translation>Atletas %1, cascos %2, fichas de modelo %3</translation>
    </message>
</context>
<context>
    <name>snugline::models::SheetEditor</name>
    <message>
        <source>%1: %2</source>
        <comment>where, what is wrong</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Dropped: a sheet without a name</source>
        <translation>Desechada: una ficha sin nombre</translation>
    </message>
    <message>
        <source>Dropped: %1</source>
        <translation>Desechada: %1</translation>
    </message>
    <message>
        <source>No name yet</source>
        <translation>Todavía sin nombre</translation>
    </message>
    <message>
        <source>A new sheet</source>
        <translation>Una ficha nueva</translation>
    </message>
    <message>
        <source>Instead of %1, once it is kept</source>
        <translation>En lugar de %1, al guardarla</translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) to put right</source>
        <translation>
            <numerusform>%n valor por corregir</numerusform>
            <numerusform>%n valores por corregir</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) not said yet</source>
        <translation>
            <numerusform>%n valor por decir</numerusform>
            <numerusform>%n valores por decir</numerusform>
        </translation>
    </message>
    <message>
        <source>The sheet was changed meanwhile. What follows compares with the one that counts now.</source>
        <translation>La ficha cambió mientras tanto. Lo que sigue compara con la que cuenta ahora.</translation>
    </message>
    <message>
        <source>A new model: no helmet goes by it yet.</source>
        <translation>Un modelo nuevo: todavía no tiene cascos.</translation>
    </message>
    <message>
        <source>No helmet goes by this sheet.</source>
        <translation>Ningún casco sigue esta ficha.</translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) of this model</source>
        <translation>
            <numerusform>%n casco de este modelo</numerusform>
            <numerusform>%n cascos de este modelo</numerusform>
        </translation>
    </message>
    <message>
        <source>%1. Nobody&apos;s row, size or label changes.</source>
        <translation>%1. No cambia la fila, la talla ni la etiqueta de nadie.</translation>
    </message>
    <message>
        <source>%1. Concerned: %2, %3. Rows of the board that change: %4.</source>
        <comment>all helmets, athletes, helmets, rows</comment>
        <translation>%1. Les toca a: %2, %3. Filas del tablero que cambian: %4.</translation>
    </message>
    <message numerus="yes">
        <source>%n athlete(s)</source>
        <translation>
            <numerusform>%n atleta</numerusform>
            <numerusform>%n atletas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n casco</numerusform>
            <numerusform>%n cascos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, size %2</source>
        <translation>%1, talla %2</translation>
    </message>
    <message numerus="yes">
        <source>%n check(s) open now go on by the sheet they began with.</source>
        <translation>
            <numerusform>%n revisión abierta sigue con la ficha con la que empezó.</numerusform>
            <numerusform>%n revisiones abiertas siguen con la ficha con la que empezaron.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a size, how many helmets</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Helmets have sizes that this sheet lacks (%1). Leave these sizes in, under the same name, or retire the helmets first.</source>
        <translation>Hay cascos con tallas que esta ficha no tiene (%1). Deje esas tallas, con el mismo nombre, o retire primero los cascos.</translation>
    </message>
    <message>
        <source>What is written here cannot be stored on this device. It is lost when the app ends.</source>
        <translation>Lo que se escribe aquí no se puede guardar en este dispositivo. Se pierde cuando la aplicación termina.</translation>
    </message>
</context>
<context>
    <name>snugline::models::SheetPage</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>start %1, within %2</source>
        <translation>inicio %1, dentro de %2</translation>
    </message>
    <message>
        <source>Helmet with %1</source>
        <translation>Casco con %1</translation>
    </message>
    <message>
        <source>Air, jaw left and right</source>
        <translation>Aire, mandíbula izquierda y derecha</translation>
    </message>
    <message>
        <source>Air, %1</source>
        <translation>Aire, %1</translation>
    </message>
    <message>
        <source>Crown pads</source>
        <translation>Almohadillas de coronilla</translation>
    </message>
    <message>
        <source>Jaw pads</source>
        <translation>Carrilleras</translation>
    </message>
    <message>
        <source>Brow gap</source>
        <translation>Altura sobre las cejas</translation>
    </message>
    <message>
        <source>Chin strap</source>
        <translation>Barboquejo</translation>
    </message>
    <message numerus="yes">
        <source>%n point(s)</source>
        <translation>
            <numerusform>%n punto</numerusform>
            <numerusform>%n puntos</numerusform>
        </translation>
    </message>
    <message>
        <source>Gap of %1 after %2</source>
        <translation>Hueco de %1 después de %2</translation>
    </message>
    <message>
        <source>Overlaps %1 by %2</source>
        <translation>Se solapa con %1 en %2</translation>
    </message>
    <message>
        <source>Meets %1</source>
        <translation>Sigue a %1</translation>
    </message>
    <message>
        <source>Counts. First adopted %1</source>
        <translation>Cuenta. Adoptada por primera vez %1</translation>
    </message>
    <message>
        <source>Counts no more. Replaced %1</source>
        <translation>Ya no cuenta. Reemplazada %1</translation>
    </message>
    <message>
        <source>No helmet goes by it</source>
        <translation>Ningún casco la sigue</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>helmets, those worn</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n casco</numerusform>
            <numerusform>%n cascos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n with athletes</source>
        <translation>
            <numerusform>%n con atletas</numerusform>
            <numerusform>%n con atletas</numerusform>
        </translation>
    </message>
    <message>
        <source>Certified for</source>
        <translation>Certificado por</translation>
    </message>
    <message>
        <source>Age limit</source>
        <translation>Límite de edad</translation>
    </message>
    <message>
        <source>the maker states none</source>
        <translation>el fabricante no indica ninguno</translation>
    </message>
    <message>
        <source>Move of air that calls for a look</source>
        <translation>Cambio del aire que pide un vistazo</translation>
    </message>
    <message>
        <source>Loss in a week that is no leak</source>
        <translation>Pérdida en una semana que no es fuga</translation>
    </message>
    <message>
        <source>Set in this order</source>
        <translation>Se pone en este orden</translation>
    </message>
    <message>
        <source>Short name</source>
        <translation>Nombre corto</translation>
    </message>
    <message>
        <source>If no: %1</source>
        <translation>Si no: %1</translation>
    </message>
    <message>
        <source>Counts now</source>
        <translation>Cuenta ahora</translation>
    </message>
    <message>
        <source>Replaced %1</source>
        <translation>Reemplazada %1</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Escrito en %1</translation>
    </message>
    <message>
        <source>Adopted</source>
        <translation>Adoptada</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Puesta otra vez</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Cambiada</translation>
    </message>
</context>
<context>
    <name>snugline::models::SheetsModel</name>
    <message>
        <source>%1 is adopted already</source>
        <translation>%1 ya está adoptada</translation>
    </message>
    <message>
        <source>%1 adopted</source>
        <translation>%1 adoptadas</translation>
    </message>
    <message numerus="yes">
        <source> Changed %n time(s).</source>
        <translation>
            <numerusform> Cambió %n vez.</numerusform>
            <numerusform> Cambió %n veces.</numerusform>
        </translation>
    </message>
    <message>
        <source>Sizes %1; %2</source>
        <comment>names, where there is air</comment>
        <translation>Tallas %1; %2</translation>
    </message>
    <message>
        <source>%1, %2.</source>
        <comment>helmets, athletes</comment>
        <translation>%1, %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s)</source>
        <translation>
            <numerusform>%n casco</numerusform>
            <numerusform>%n cascos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n athlete(s)</source>
        <translation>
            <numerusform>%n atleta</numerusform>
            <numerusform>%n atletas</numerusform>
        </translation>
    </message>
    <message>
        <source>Until %1; now %2</source>
        <comment>a moment, the sheet that counts</comment>
        <translation>Hasta %1; ahora %2</translation>
    </message>
    <message>
        <source>%1#%2: %3</source>
        <comment>file, path in it, what is wrong</comment>
        <translation>%1#%2: %3</translation>
    </message>
    <message>
        <source>This file is no whole model sheet. %1</source>
        <translation>Este archivo no es una ficha de modelo entera. %1</translation>
    </message>
    <message>
        <source>A half written sheet is here. Keep it or drop it first</source>
        <translation>Hay una ficha a medio escribir. Guárdela o deséchela primero</translation>
    </message>
    <message>
        <source>%1 counts from now on</source>
        <translation>%1 cuenta desde ahora</translation>
    </message>
</context>
<context>
    <name>snugline::models::SwapModel</name>
    <message>
        <source>%1, %2</source>
        <comment>serial, kind</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>On hold already: %1</source>
        <translation>Ya retenido: %1</translation>
    </message>
    <message>
        <source>Does not fit</source>
        <translation>No ajusta</translation>
    </message>
    <message>
        <source>Broken</source>
        <translation>Roto</translation>
    </message>
    <message>
        <source>Other cause</source>
        <translation>Otra causa</translation>
    </message>
    <message>
        <source>same size</source>
        <translation>misma talla</translation>
    </message>
    <message>
        <source>%1, size %2</source>
        <translation>%1, talla %2</translation>
    </message>
    <message>
        <source>The head is not taped: the size of the helmet before stands in, %1.</source>
        <translation>La cabeza no está medida: se toma la talla del casco anterior, %1.</translation>
    </message>
    <message>
        <source>This head is off the charts of every model here.</source>
        <translation>Esta cabeza está fuera de las tablas de todos los modelos que hay aquí.</translation>
    </message>
    <message>
        <source>By an old tape reading: %1.</source>
        <translation>Según una medida vieja: %1.</translation>
    </message>
    <message>
        <source>By the tape: %1.</source>
        <translation>Según la cinta: %1.</translation>
    </message>
    <message>
        <source>There is no spare for this head.</source>
        <translation>No hay repuesto para esta cabeza.</translation>
    </message>
    <message>
        <source>There is no spare in %1, size %2 or any size near it.</source>
        <translation>No hay repuesto en %1, talla %2, ni en una talla cercana.</translation>
    </message>
    <message numerus="yes">
        <source>%n worn by others</source>
        <translation>
            <numerusform>%n en uso por otros</numerusform>
            <numerusform>%n en uso por otros</numerusform>
        </translation>
    </message>
    <message>
        <source>It goes on hold: %1</source>
        <translation>Queda retenido: %1</translation>
    </message>
    <message>
        <source>In our hands</source>
        <translation>En nuestras manos</translation>
    </message>
    <message>
        <source>Still with %1</source>
        <comment>an athlete</comment>
        <translation>Aún lo tiene %1</translation>
    </message>
    <message>
        <source>Nothing wrong with it</source>
        <translation>No tiene nada malo</translation>
    </message>
    <message>
        <source>The head is not taped: sizes are a guess.</source>
        <translation>La cabeza no está medida: las tallas son una suposición.</translation>
    </message>
    <message>
        <source>The readings of the head disagree: no size can be said.</source>
        <translation>Las lecturas de la cabeza no coinciden: no se puede decir una talla.</translation>
    </message>
    <message>
        <source>The readings of the head disagree: the size of the helmet before stands in, %1.</source>
        <translation>Las lecturas de la cabeza no coinciden: en su lugar vale la talla del casco anterior, %1.</translation>
    </message>
    <message>
        <source>Given: %1</source>
        <translation>Se entregó: %1</translation>
    </message>
    <message>
        <source>%1 swapped for %2</source>
        <translation>Se cambió %1 por %2</translation>
    </message>
</context>
<context>
    <name>snugline::models::TurnModel</name>
    <message>
        <source>What is chosen here could not be kept on this device. Open the season before the app is closed</source>
        <translation>Lo elegido aquí no se pudo guardar en este dispositivo. Abra la temporada antes de cerrar la aplicación</translation>
    </message>
    <message>
        <source>%1 is closed</source>
        <translation>%1: cerrada</translation>
    </message>
    <message>
        <source>Season %1 is open</source>
        <translation>La temporada %1 está abierta</translation>
    </message>
    <message>
        <source>In service, on the shelf</source>
        <translation>En servicio, en el estante</translation>
    </message>
    <message>
        <source>On hold</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Not in service</source>
        <translation>Fuera de servicio</translation>
    </message>
    <message>
        <source>Still with an athlete</source>
        <translation>Todavía con atletas</translation>
    </message>
    <message>
        <source>In repair</source>
        <translation>En reparación</translation>
    </message>
    <message>
        <source>Sent out</source>
        <translation>Enviado</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdido</translation>
    </message>
    <message>
        <source>Season %1</source>
        <translation>Temporada %1</translation>
    </message>
    <message>
        <source>Closed on %1</source>
        <translation>Cerrada el %1</translation>
    </message>
    <message>
        <source>, every helmet was in</source>
        <translation>, estaban todos los cascos</translation>
    </message>
    <message numerus="yes">
        <source>, %n helmet(s) missing</source>
        <translation>
            <numerusform>, faltaba %n casco</numerusform>
            <numerusform>, faltaban %n cascos</numerusform>
        </translation>
    </message>
    <message>
        <source>Its last day is not set</source>
        <translation>Su último día no está fijado</translation>
    </message>
    <message>
        <source>Its last day was %1</source>
        <translation>Su último día fue el %1</translation>
    </message>
    <message>
        <source>Runs to %1</source>
        <translation>Hasta el %1</translation>
    </message>
    <message>
        <source>Every helmet that is to come is in</source>
        <translation>Están todos los cascos que debían llegar</translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) not handed in</source>
        <translation>
            <numerusform>%n casco sin entregar</numerusform>
            <numerusform>%n cascos sin entregar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n with athletes</source>
        <translation>
            <numerusform>, %n con atletas</numerusform>
            <numerusform>, %n con atletas</numerusform>
        </translation>
    </message>
    <message>
        <source>Every helmet is in</source>
        <translation>Están todos los cascos</translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) will be named as missing</source>
        <translation>
            <numerusform>Se nombrará %n casco como faltante</numerusform>
            <numerusform>Se nombrarán %n cascos como faltantes</numerusform>
        </translation>
    </message>
    <message>
        <source>Check left open</source>
        <translation>Revisión sin terminar</translation>
    </message>
    <message>
        <source>%1, begun %2</source>
        <translation>%1, empezó el %2</translation>
    </message>
    <message numerus="yes">
        <source>%n word(s) not answered</source>
        <translation>
            <numerusform>%n aviso sin respuesta</numerusform>
            <numerusform>%n avisos sin respuesta</numerusform>
        </translation>
    </message>
    <message>
        <source>Athletes still with a helmet</source>
        <translation>Atletas que aún tienen casco</translation>
    </message>
    <message>
        <source>Checks left open</source>
        <translation>Revisiones sin terminar</translation>
    </message>
    <message>
        <source>Words not answered</source>
        <translation>Avisos sin respuesta</translation>
    </message>
    <message>
        <source>%1 is no day. Write it as year-month-day</source>
        <translation>%1 no es un día. Escríbalo como año-mes-día</translation>
    </message>
    <message>
        <source>The last day must come after the first</source>
        <translation>El último día debe venir después del primero</translation>
    </message>
    <message numerus="yes">
        <source>That would be %n days. Look at the years</source>
        <translation>
            <numerusform>Eso sería %n día. Revise los años</numerusform>
            <numerusform>Eso serían %n días. Revise los años</numerusform>
        </translation>
    </message>
    <message>
        <source>The first day must come after %1, the end of season %2</source>
        <translation>El primer día debe venir después del %1, el fin de la temporada %2</translation>
    </message>
    <message>
        <source>The same weeks: %1 to %2</source>
        <translation>Las mismas semanas: del %1 al %2</translation>
    </message>
    <message>
        <source>No birth year</source>
        <translation>Sin año de nacimiento</translation>
    </message>
    <message>
        <source>Born %1</source>
        <translation>Nacimiento: %1</translation>
    </message>
    <message>
        <source>%1 of %2 leave</source>
        <translation>%1 de %2 se van</translation>
    </message>
    <message>
        <source>still has a helmet</source>
        <translation>aún tiene casco</translation>
    </message>
    <message numerus="yes">
        <source>%n on the roster</source>
        <translation>
            <numerusform>%n en el plantel</numerusform>
            <numerusform>%n en el plantel</numerusform>
        </translation>
    </message>
    <message>
        <source>, all stay</source>
        <translation>, sin bajas</translation>
    </message>
    <message numerus="yes">
        <source>, %n leave</source>
        <translation>
            <numerusform>, %n se va</numerusform>
            <numerusform>, %n se van</numerusform>
        </translation>
    </message>
    <message>
        <source>Model and size not said</source>
        <translation>Modelo y talla sin indicar</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>model, size</comment>
        <translation>%1, %2</translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) go over</source>
        <translation>
            <numerusform>Pasa %n casco</numerusform>
            <numerusform>Pasan %n cascos</numerusform>
        </translation>
    </message>
    <message>
        <source>It needs a name, a first and a last day</source>
        <translation>Necesita un nombre, un primer y un último día</translation>
    </message>
    <message>
        <source>Open the next season</source>
        <translation>Abrir la próxima temporada</translation>
    </message>
    <message>
        <source>Open season %1</source>
        <translation>Abrir la temporada %1</translation>
    </message>
    <message>
        <source>%1 is open again</source>
        <translation>%1 está abierta otra vez</translation>
    </message>
</context>
<context>
    <name>snugline::models::UnitAir</name>
    <message>
        <source>kPa</source>
        <translation>kPa</translation>
    </message>
    <message>
        <source>psi</source>
        <translation>psi</translation>
    </message>
    <message>
        <source>The sheet starts at %1, and its band is %2 to %3.</source>
        <translation>La ficha empieza en %1, y su margen es de %2 a %3.</translation>
    </message>
    <message>
        <source>Not measured yet.</source>
        <translation>Aún sin medir.</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) without weather cannot be compared.</source>
        <translation>
            <numerusform>%n lectura sin clima no se puede comparar.</numerusform>
            <numerusform>%n lecturas sin clima no se pueden comparar.</numerusform>
        </translation>
    </message>
    <message>
        <source>As read</source>
        <translation>Como se leyó</translation>
    </message>
    <message>
        <source>Carried to 20 °C at sea level</source>
        <translation>Llevado a 20 °C a nivel del mar</translation>
    </message>
    <message>
        <source>Carried to 68 °F at sea level</source>
        <translation>Llevado a 68 °F a nivel del mar</translation>
    </message>
    <message>
        <source>Set or pumped</source>
        <translation>Puesto o bombeado</translation>
    </message>
    <message>
        <source>Leak slope and its 95 % band</source>
        <translation>Pendiente de la fuga y su franja de 95 %</translation>
    </message>
    <message>
        <source>set</source>
        <translation>puesto</translation>
    </message>
    <message>
        <source>pumped</source>
        <translation>bombeado</translation>
    </message>
    <message>
        <source>read</source>
        <translation>leído</translation>
    </message>
    <message>
        <source>on the head</source>
        <translation>en la cabeza</translation>
    </message>
    <message>
        <source>off the head</source>
        <translation>fuera de la cabeza</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>a %1</translation>
    </message>
    <message>
        <source>%1 recorded: %2</source>
        <comment>a bladder, a pressure</comment>
        <translation>%1 registrada: %2</translation>
    </message>
</context>
<context>
    <name>snugline::models::UnitPage</name>
    <message>
        <source>not seen yet</source>
        <translation>aún sin ver</translation>
    </message>
    <message>
        <source>seen %1</source>
        <translation>visto %1</translation>
    </message>
    <message>
        <source>seen %1 by %2</source>
        <translation>visto %1 por %2</translation>
    </message>
    <message>
        <source>%1 not measured</source>
        <comment>a bladder</comment>
        <translation>%1 sin medir</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>a bladder, its pressure</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>held %1</source>
        <translation>retenido %1</translation>
    </message>
    <message>
        <source>held %1 by %2</source>
        <translation>retenido %1 por %2</translation>
    </message>
    <message>
        <source>Put in service</source>
        <translation>Poner en servicio</translation>
    </message>
    <message>
        <source>To repair</source>
        <translation>A reparación</translation>
    </message>
    <message>
        <source>Send out to recertify</source>
        <translation>Enviar a recertificar</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdido</translation>
    </message>
    <message>
        <source>Retire</source>
        <translation>Dar de baja</translation>
    </message>
    <message>
        <source>Back with us</source>
        <translation>De vuelta con nosotros</translation>
    </message>
    <message>
        <source>No helmet yet</source>
        <translation>Aún sin casco</translation>
    </message>
    <message>
        <source>Has %1 now</source>
        <translation>Ahora tiene %1</translation>
    </message>
    <message>
        <source>given back</source>
        <translation>devuelto</translation>
    </message>
    <message>
        <source>faceguard</source>
        <translation>careta</translation>
    </message>
    <message>
        <source>hardware</source>
        <translation>herrajes</translation>
    </message>
    <message>
        <source>liner or air</source>
        <translation>forro o aire</translation>
    </message>
    <message>
        <source>chin strap</source>
        <translation>barboquejo</translation>
    </message>
    <message>
        <source>shell</source>
        <translation>carcasa</translation>
    </message>
    <message>
        <source>label lapses</source>
        <translation>la etiqueta vence</translation>
    </message>
    <message>
        <source>end of the season</source>
        <translation>fin de la temporada</translation>
    </message>
    <message>
        <source>the maker asks for it</source>
        <translation>lo pide el fabricante</translation>
    </message>
    <message>
        <source>not given back</source>
        <translation>no se devolvió</translation>
    </message>
    <message>
        <source>not found at the count</source>
        <translation>no apareció en el conteo</translation>
    </message>
    <message>
        <source>stolen</source>
        <translation>robado</translation>
    </message>
    <message numerus="yes">
        <source>Certification every %n months by its sheet</source>
        <translation>
            <numerusform>Certificación cada %n mes según su ficha</numerusform>
            <numerusform>Certificación cada %n meses según su ficha</numerusform>
        </translation>
    </message>
    <message>
        <source>between %1 and %2, judged by the earlier</source>
        <translation>entre el %1 y el %2, se juzga por la primera fecha</translation>
    </message>
    <message>
        <source>%1. Its age ends it %2</source>
        <translation>%1. Su edad le pone fin el %2</translation>
    </message>
    <message>
        <source>%1. Taken back since, its file deleted</source>
        <translation>%1. Retirada después, su archivo borrado</translation>
    </message>
    <message>
        <source>age limit</source>
        <translation>límite de edad</translation>
    </message>
    <message>
        <source>crack in the shell</source>
        <translation>grieta en la carcasa</translation>
    </message>
    <message>
        <source>not worth a repair</source>
        <translation>no vale la reparación</translation>
    </message>
    <message>
        <source>turned down at recertification</source>
        <translation>rechazado al recertificar</translation>
    </message>
    <message numerus="yes">
        <source>Put in service, %n point(s) not seen</source>
        <translation>
            <numerusform>Poner en servicio, %n punto sin ver</numerusform>
            <numerusform>Poner en servicio, %n puntos sin ver</numerusform>
        </translation>
    </message>
    <message>
        <source>Back to the shelf</source>
        <translation>De vuelta al estante</translation>
    </message>
</context>
<context>
    <name>snugline::models::UnitsModel</name>
    <message>
        <source>All</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>In service</source>
        <translation>En servicio</translation>
    </message>
    <message>
        <source>On hold</source>
        <translation>Retenidos</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>En el estante</translation>
    </message>
    <message>
        <source>With athletes</source>
        <translation>En uso</translation>
    </message>
    <message>
        <source>Label lapses</source>
        <translation>Etiqueta por vencer</translation>
    </message>
</context>
<context>
    <name>snugline::models::UnwellModel</name>
    <message>
        <source>Said %1. See the athlete now and follow the local concussion protocol.</source>
        <comment>a time or a day</comment>
        <translation>Dicho %1. Atienda ya a esta persona y siga el protocolo local de conmoción.</translation>
    </message>
    <message>
        <source>A player at this tablet, %1</source>
        <comment>a time or a day</comment>
        <translation>Una persona del equipo en esta tableta, %1</translation>
    </message>
    <message>
        <source>Said %1. With the athletic trainer. Back only with written permission from a licensed health care professional.</source>
        <comment>a time or a day</comment>
        <translation>Lo dijo %1. Con el entrenador atlético o la entrenadora atlética (athletic trainer). Vuelve solo con permiso escrito de profesionales de la salud con licencia.</translation>
    </message>
    <message>
        <source>Then said to be touched by mistake: ask the athlete.</source>
        <translation>Después dijo que lo tocó sin querer: pregúntele.</translation>
    </message>
    <message>
        <source>The athlete says that an adult was told.</source>
        <translation>Dice que ya le avisó a un adulto.</translation>
    </message>
    <message>
        <source>I have been told</source>
        <translation>Ya me avisaron</translation>
    </message>
    <message>
        <source>I asked: a mistake</source>
        <translation>Pregunté: fue sin querer</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>snugline::models::WarningModel</name>
    <message numerus="yes">
        <source>%n athlete(s) have yet to sign the yearly warning</source>
        <translation>
            <numerusform>%n atleta aún no firma la advertencia anual</numerusform>
            <numerusform>%n atletas aún no firman la advertencia anual</numerusform>
        </translation>
    </message>
    <message>
        <source>Yearly warning: read and signed</source>
        <translation>Advertencia anual: leída y firmada</translation>
    </message>
    <message>
        <source>Yearly warning: not signed yet, nor by a parent or guardian</source>
        <translation>Advertencia anual: aún sin firmar, tampoco por madre, padre o tutor/a</translation>
    </message>
    <message>
        <source>Yearly warning: not signed yet by the athlete</source>
        <translation>Advertencia anual: falta la firma de la persona</translation>
    </message>
    <message>
        <source>Yearly warning: not signed yet by a parent or guardian</source>
        <translation>Advertencia anual: falta la firma de madre, padre o tutor/a</translation>
    </message>
    <message>
        <source>Athlete %1, %2, before %3</source>
        <comment>initials, date, witness</comment>
        <translation>Atleta %1, %2, ante %3</translation>
    </message>
    <message>
        <source>Parent or guardian %1, %2, before %3</source>
        <comment>initials, date, witness</comment>
        <translation>Madre, padre o tutor/a %1, %2, ante %3</translation>
    </message>
    <message>
        <source>Say first who signs for staff: whoever stands by is the witness.</source>
        <translation>Diga primero quién firma por el personal: quien está al lado es testigo.</translation>
    </message>
    <message>
        <source>Type one to four initials.</source>
        <translation>Escriba de una a cuatro iniciales.</translation>
    </message>
    <message>
        <source>The plain text of this program. It becomes the team&apos;s when the first one signs.</source>
        <translation>El texto sencillo de este programa. Pasa a ser del equipo cuando firma la primera persona.</translation>
    </message>
    <message>
        <source>Set %1</source>
        <translation>Puesto el %1</translation>
    </message>
    <message>
        <source>Set %1 by %2</source>
        <translation>Puesto el %1 por %2</translation>
    </message>
    <message>
        <source>An admin sets the text of the warning.</source>
        <translation>El texto de la advertencia lo pone una persona responsable.</translation>
    </message>
</context>
<context>
    <name>snugline::models::WeatherModel</name>
    <message>
        <source>Give the place a name.</source>
        <translation>Dé un nombre al lugar.</translation>
    </message>
    <message>
        <source>Weather not noted. Touch plus or minus, or here.</source>
        <translation>Clima sin anotar. Toque más o menos, o aquí.</translation>
    </message>
    <message>
        <source>temperature not noted</source>
        <translation>temperatura sin anotar</translation>
    </message>
    <message numerus="yes">
        <source>%n not judged</source>
        <translation>
            <numerusform>%n sin juzgar</numerusform>
            <numerusform>%n sin juzgar</numerusform>
        </translation>
    </message>
    <message>
        <source>%1. Touch what is different now; it is noted anew.</source>
        <translation>%1. Toque lo que ahora es distinto; se anota de nuevo.</translation>
    </message>
    <message numerus="yes">
        <source>%n helmet(s) could not be judged: no weather was noted when their air was set.</source>
        <translation>
            <numerusform>%n casco no se pudo juzgar: no se anotó el clima cuando se puso su aire.</numerusform>
            <numerusform>%n cascos no se pudieron juzgar: no se anotó el clima cuando se puso su aire.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n degree(s) colder</source>
        <translation>
            <numerusform>%n grado más frío</numerusform>
            <numerusform>%n grados más frío</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n degree(s) warmer</source>
        <translation>
            <numerusform>%n grado más caliente</numerusform>
            <numerusform>%n grados más caliente</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 más abajo</translation>
    </message>
    <message>
        <source>%1 higher</source>
        <translation>%1 más arriba</translation>
    </message>
    <message>
        <source>Temperature in °C</source>
        <translation>Temperatura en °C</translation>
    </message>
    <message>
        <source>Temperature in °F</source>
        <translation>Temperatura en °F</translation>
    </message>
    <message>
        <source>Elevation in metres</source>
        <translation>Altitud en metros</translation>
    </message>
    <message>
        <source>Elevation in feet</source>
        <translation>Altitud en pies</translation>
    </message>
    <message>
        <source>last %1</source>
        <comment>a temperature</comment>
        <translation>última %1</translation>
    </message>
    <message>
        <source>Air pressure there about %1</source>
        <translation>Presión del aire allí cerca de %1</translation>
    </message>
</context>
</TS>
