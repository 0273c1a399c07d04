/** The docs are tested: links, samples, the tour, and the schemas they show. */
package rundlauf.docs;
