/** A command that was asked for something it cannot do; the message is a sentence for whoever typed it. */
export class Misuse extends Error {}
