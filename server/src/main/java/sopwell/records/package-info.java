/**
 * Plain files in and out: tables that an owner keeps elsewhere.
 *
 * <p>Purpose: to read an owner's old records, and to write what the stand knows of its days as
 * tables for spreadsheets and programs. Rules: liberal in what is read, and clear about what can't
 * be: file, line, column, and what would be right. Threading: what is read is immutable.
 */
package sopwell.records;
