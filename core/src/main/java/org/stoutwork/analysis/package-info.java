/**
 * The mechanics tower: {@code model} (records of what is to be solved), {@code element} (one file a
 * kind of element), {@code solve} (putting elements together and solving). Nothing lives here.
 */
package org.stoutwork.analysis;
