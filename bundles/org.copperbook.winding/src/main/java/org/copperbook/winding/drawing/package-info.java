/** The drawings of a winding on its page. */
package org.copperbook.winding.drawing;
