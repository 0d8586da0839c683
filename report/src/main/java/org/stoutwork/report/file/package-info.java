/**
 * Files in and out. Nothing lives here but the rooms below: {@code tree} (text to a tree of nodes
 * that know where they stand), {@code field} (typed reading of that tree, with every mistake
 * gathered), {@code frame} (the frame file). Only this room and those below it know the libraries
 * that read YAML and write JSON.
 */
package org.stoutwork.report.file;
