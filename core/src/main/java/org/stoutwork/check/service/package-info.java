/**
 * Checks of use: whether the top sags or springs too much, and how far the bench racks. Uses {@code
 * check} and what it uses.
 */
package org.stoutwork.check.service;
